import type { WoodSpecies } from './woodSpecies.js';

// FPL Wood Handbook (2010, 2021): S from Tables 4-3 and 4-4, C from Table 13-5.
// [L] published text read, [L2] read second-hand, [M] from memory, [C] computed from the rest.
// name | botanical | other names | S radial, tangential, % | C radial, tangential | f, % | marks
const rows = `
hard maple|Acer saccharum|sugar maple,rock maple|4.8 9.9|0.00165 0.00353|30|S [L2], C [L]
red maple|Acer rubrum|soft maple|4.0 8.2|0.00137 0.00289|30|S [M] agreeing with C, C [L]
silver maple|Acer saccharinum||3.0 7.2|0.00102 0.00252|30|S [M], C [L]
black cherry|Prunus serotina|cherry,american cherry|3.7 7.1|0.00126 0.00248|30|S [L], C [L]
black walnut|Juglans nigra|walnut,american walnut|5.5 7.8|0.0019 0.00274|30|S [L], C [L]
white oak|Quercus alba|american white oak|5.6 10.5|0.0018 0.00365|30|S [L], C [L] of the row “white oak, commercial”
red oak|Quercus rubra|northern red oak,american red oak|4.0 8.6|0.00158 0.00369|30|S [L2], C [L] of the row “red oak, commercial”
white ash|Fraxinus americana|ash,american ash|4.9 7.8|0.00169 0.00274|30|S [L], C [L]
black ash|Fraxinus nigra||5.0 7.8|0.00172 0.00274|30|S [L], C [L]
yellow birch|Betula alleghaniensis||7.3 9.5|0.00256 0.00338|30|S [L], C [L]
paper birch|Betula papyrifera|white birch|6.3 8.6|0.00219 0.00304|30|S [L], C [L]
American beech|Fagus grandifolia|beech|5.5 11.9|0.0019 0.00431|30|S [L], C [L]
red alder|Alnus rubra|alder|4.4 7.3|0.00151 0.00256|30|S [L], C [L]
American basswood|Tilia americana|basswood|6.6 9.3|0.0023 0.0033|30|S [L], C [L]
butternut|Juglans cinerea||3.4 6.4|0.00116 0.00223|30|S [L], C [L]
American elm|Ulmus americana|elm|4.2 9.5|0.00144 0.00338|30|S [L], C [L]
slippery elm|Ulmus rubra||4.9 8.9|0.00169 0.00315|30|S [L], C [L]
pecan|Carya illinoinensis|pecan hickory,hickory pecan|4.9 8.9|0.00169 0.00315|30|S [L], C [L]
hickory|Carya tomentosa|true hickory,mockernut hickory|7.7 11.0|0.00259 0.00411|30|S [L] of mockernut, C_T [L2], C_R [M], of the row “hickory, true”
sweetgum|Liquidambar styraciflua|gum|5.3 10.2|0.00183 0.00365|30|S [L], C [L]
American sycamore|Platanus occidentalis|sycamore|5.0 8.4|0.00172 0.00296|30|S [L], C [L]
yellow-poplar|Liriodendron tulipifera|poplar,tulip poplar,tulipwood|4.6 8.2|0.00158 0.00289|30|S [L], C [M] agreeing with S
western redcedar|Thuja plicata|western red cedar,red cedar|2.4 5.0|0.00111 0.00234|22|S [L], C [L2]; 22 % rule [C]
eastern white pine|Pinus strobus|white pine|2.1 6.1|0.00071 0.00212|30|S [M] agreeing with C, C [L2]
ponderosa pine|Pinus ponderosa||3.9 6.2|0.00133 0.00216|30|S [M] agreeing with C, C [L2]
Douglas-fir|Pseudotsuga menziesii|douglas fir coast,oregon pine|4.8 7.6|0.00165 0.00267|30|S [L], C [L2]
white fir|Abies concolor||3.3 7.0|0.00112 0.00245|30|S [L2], C_T [L2], C_R [M] agreeing with S
redwood|Sequoia sempervirens|old growth redwood|2.6 4.4|0.0012 0.00205|22|S [M] agreeing with C, C [L2]; 22 % rule [C]
mahogany|Swietenia macrophylla|true mahogany,honduran mahogany,genuine mahogany,american mahogany|3.0 4.1|0.00172 0.00238|22|S [L], C [M]; the row rests on older S of 3.7 and 5.1, 22 % rule [C]
African mahogany|Khaya|khaya|2.5 4.5|0.00085 0.00155|30|S [L], C [C] from S, not in the table
sapele|Entandrophragma cylindricum||4.6 7.4|0.00158 0.00259|30|S [M], C [C] from S
teak|Tectona grandis||2.5 5.8|0.00101 0.00186|22|S [M], C_T [L2], C_R [M]; the row rests on older S of 2.2 and 4.0, 22 % rule [C]
`;

/** Species that `gap` knows, by trade name. */
export const speciesTable: readonly WoodSpecies[] = rows.trim().split('\n').map(readRow);

function readRow(row: string): WoodSpecies {
  const cells = row.split('|');
  return {
    name: cells[0]!,
    botanical: cells[1]!,
    aliases: cells[2] ? cells[2].split(',') : [],
    shrinkagePercent: readPair(cells[3]!),
    coefficient: readPair(cells[4]!),
    fibreSaturationPercent: cells[5] === '22' ? 22 : 30,
    marks: cells[6]!,
  };
}

function readPair(text: string): { readonly radial: number; readonly tangential: number } {
  const [radial, tangential] = text.split(' ').map(Number) as [number, number];
  return { radial, tangential };
}
