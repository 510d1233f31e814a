// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel;

import java.util.ArrayList;
import java.util.List;

import garboard.report.excel.Line.Content;
import garboard.report.excel.Line.Placed;

/** Works out how high rows must be, since programs do not do it for merged cells, and splits those that no program could show. */
final class Rows {

    private static final double SMALLEST_STEP_PT = 0.75;
    private static final double INDENT_PT = 8;

    private Rows() {
    }

    /** {@return a row as high as its fullest cell} */
    static Line line(List<Placed> cells, SheetGrid grid, double paddingPt, boolean keep) {
        double height = 0;
        int most = 0;
        for (Placed cell : cells) {
            int lines = lines(cell, grid).size();
            most = Math.max(most, lines);
            height = Math.max(height, lines * cell.look().lineHeightPt());
        }
        return new Line(rounded(height + paddingPt), keep, false, most == 1 ? cells.stream().map(Rows::middle).toList() : List.copyOf(cells));
    }

    /** {@return the row, or several where its text would not go into the highest row there is} */
    static List<Line> split(List<Placed> cells, SheetGrid grid, double paddingPt, boolean keep) {
        Line whole = line(cells, grid, paddingPt, keep);
        if (whole.heightPt() <= Line.HIGHEST_PT) {
            return List.of(whole);
        }
        var parts = new ArrayList<Line>();
        List<List<String>> texts = cells.stream().map(cell -> lines(cell, grid)).toList();
        int longest = texts.stream().mapToInt(List::size).max().orElse(0);
        double tallest = cells.stream().mapToDouble(cell -> cell.look().lineHeightPt()).max().orElse(1);
        int perRow = (int) ((Line.HIGHEST_PT - paddingPt) / tallest);
        for (int from = 0; from < longest; from += perRow) {
            var part = new ArrayList<Placed>();
            for (int index = 0; index < cells.size(); index++) {
                part.add(part(cells.get(index), texts.get(index), from, perRow));
            }
            parts.add(line(part, grid, paddingPt, keep && from + perRow >= longest));
        }
        return parts;
    }

    /** A single line keeps off the lines above and below it. */
    private static Placed middle(Placed cell) {
        return cell.look().down() == Look.Down.TOP ? new Placed(cell.span(), cell.content(), cell.look().inTheMiddle()) : cell;
    }

    private static Placed part(Placed cell, List<String> text, int from, int perRow) {
        if (!(cell.content() instanceof Content.Words)) {
            return from == 0 ? cell : new Placed(cell.span(), Line.NOTHING, cell.look());
        }
        if (from >= text.size()) {
            return new Placed(cell.span(), Line.NOTHING, cell.look());
        }
        String some = String.join("", text.subList(from, Math.min(from + perRow, text.size())));
        return new Placed(cell.span(), new Content.Words(some.endsWith("\n") ? some.substring(0, some.length() - 1) : some), cell.look());
    }

    private static List<String> lines(Placed cell, SheetGrid grid) {
        if (!(cell.content() instanceof Content.Words words)) {
            return List.of("");
        }
        Look look = cell.look();
        if (!look.wrap()) {
            return List.of(words.text());
        }
        double width = grid.innerWidthPt(cell.span()) - (look.indent() ? INDENT_PT : 0);
        return TextMeasure.wrap(words.text(), width, look.sizePt(), look.bold());
    }

    static double rounded(double heightPt) {
        return Math.ceil(heightPt / SMALLEST_STEP_PT) * SMALLEST_STEP_PT;
    }
}
