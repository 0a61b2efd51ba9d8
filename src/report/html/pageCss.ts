import { fontFamily } from '../draw/fontFamily.js';
import { themeCss } from '../draw/themeCss.js';
import { themes } from '../draw/themes.js';
import { cannotTellLook } from '../ramp/visibilityRamp.js';

const { bright, dark } = themes;

/** How every report page looks: bright by default and on paper, dark when the system asks. */
export const pageCss = `
:root{color-scheme:light dark;--paper:${bright.paper};--ink:${bright.ink};--quiet:${bright.quiet};--rule:${bright.rule}}
@media screen and (prefers-color-scheme:dark){:root{--paper:${dark.paper};--ink:${dark.ink};--quiet:${dark.quiet};--rule:${dark.rule}}${themeCss(dark)}}
*{box-sizing:border-box}
html{-webkit-text-size-adjust:100%}
body{margin:0;background:var(--paper);color:var(--ink);font:1rem/1.5 ${fontFamily};font-variant-numeric:tabular-nums}
main{max-width:1192px;margin:0 auto;padding:1rem}
h1{font-size:clamp(1.2rem,.9rem + 1.2vw,1.75rem);line-height:1.32;margin:.4rem 0 1rem;max-width:64ch;font-weight:650;text-wrap:pretty}
h2{font-size:1.1rem;margin:1.8rem 0 .4rem}
figure{margin:0 -1rem 1rem}
figure svg{display:block;width:100%;height:auto}
body{overflow-wrap:break-word}
.fraction{white-space:nowrap}
.fraction>span{font-size:.72em}
.fraction>span:first-child{vertical-align:.38em;line-height:0}
.seams{padding-left:2.2em;margin:0;max-width:80ch}
.seams li{margin:.35rem 0}
.seams li::marker{font-weight:650}
.plain{padding-left:1.1em;margin:.3rem 0;max-width:80ch}
summary{cursor:pointer;font-weight:650;font-size:1.1rem;padding:.6rem 0;min-height:44px}
.scroll{overflow-x:auto}
table{border-collapse:collapse;margin:.2rem 0 1rem}
th,td{text-align:left;vertical-align:top;padding:.4rem .9rem .4rem 0;border-bottom:1px solid var(--rule)}
thead th{white-space:nowrap}
tbody th{font-weight:400;color:var(--quiet);min-width:9rem}
td.untold{color:var(--quiet);font-style:italic}
.swatch{display:inline-block;vertical-align:-.05em;margin-right:.4em}
.hatched{background:repeating-linear-gradient(45deg,${cannotTellLook.ground} 0 4px,${cannotTellLook.stroke} 4px 6px)}
.pictures img{width:auto;height:auto;max-width:min(280px,42vw);max-height:180px;display:block}
.pictures tbody th{overflow-wrap:anywhere;min-width:8rem}
.pictures tbody th{color:var(--ink);font-weight:650}
.wipe{position:relative;overflow:hidden;touch-action:pan-y;margin:0 0 1.5rem}
.wipe img{position:absolute;inset:0;width:100%;height:100%}
.wipe .wipe-after{clip-path:inset(0 0 0 var(--cut))}
.wipe-edge{position:absolute;top:0;bottom:0;left:var(--cut);width:3px;margin-left:-1.5px;background:#fff;box-shadow:0 0 0 1px #161616}
.wipe-edge::after{content:"";position:absolute;top:50%;left:50%;width:44px;height:44px;margin:-22px;border-radius:50%;background:#fff;border:1.5px solid #161616;opacity:.92}
.wipe-name{position:absolute;bottom:.5rem;padding:.1rem .5rem;background:#fff;color:#161616;border-radius:3px}
.wipe-left{left:.5rem}
.wipe-right{right:.5rem}
.wipe input{position:absolute;inset:0;width:100%;height:100%;margin:0;opacity:0;cursor:ew-resize}
.wipe:focus-within{outline:3px solid var(--ink);outline-offset:2px}
.photo-store{position:absolute;width:0;height:0;overflow:hidden}
.tablet,.phone{display:none}
@media (max-width:899px){.desk{display:none}.tablet{display:block}}
@media (max-width:559px){.tablet{display:none}.phone{display:block}main{padding:.6rem}figure{margin:0 -.6rem 1rem}
.pictures thead{display:none}
.pictures,.pictures tbody,.pictures tr,.pictures th,.pictures td{display:block}
.pictures tr{padding:.6rem 0;border-bottom:1px solid var(--rule)}
.pictures th,.pictures td{border:0;padding:.15rem 0}
.pictures img{max-width:100%;max-height:260px}
.pictures td::before{content:attr(data-head);display:block;color:var(--quiet);font-style:normal;font-size:.85em}}
@media print{
@page{margin:12mm}
body{font-size:10.5pt;-webkit-print-color-adjust:exact;print-color-adjust:exact}
main{padding:0}
.desk,.phone{display:none}.tablet{display:block}
figure{margin:0 0 1rem}
figure svg{max-height:215mm}
.pictures img{max-width:60mm;max-height:40mm}
table{font-size:8.5pt;width:100%}
thead th{white-space:normal}
tbody th{min-width:0}
.scroll{overflow:visible}
.wipe{aspect-ratio:auto!important;overflow:visible}
.wipe img{position:static;display:block;width:auto;max-width:100%;height:auto;max-height:120mm;margin-bottom:3mm}
.wipe .wipe-before{display:none}
.wipe .wipe-after{clip-path:none}
.wipe-edge,.wipe input,.wipe-name{display:none}
details:not(.long)::details-content{content-visibility:visible;block-size:auto;opacity:1}
details.long:not([open]){display:none}
summary{list-style:none;padding:0;min-height:0}
figure,tr,li{break-inside:avoid}
h2{margin-top:1rem;break-after:avoid}
h2+table,h2+*{break-before:avoid}
}
`.replaceAll('\n', '');
