// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.fields;

/**
 * How wide what stands in a row is, for a width of the sheet. All from the width of a letter, so that it follows the size of the font.
 *
 * @param em width of an average letter
 * @param mark room at the left for the mark
 * @param name width of the names
 * @param editorX where editors begin
 * @param editors room from there to the right edge
 * @param stacked whether the editor stands below the name, because the sheet is narrow
 */
record Columns(int width, int em, int mark, int name, int editorX, int editors, boolean stacked) {

    private static final int MARK = 3;
    private static final int GAP = 2;
    private static final int NARROW = 64;
    private static final int SHORTEST_NAME = 22;
    private static final int LONGEST_NAME = 40;
    private static final double SHARE_OF_NAMES = 0.38;
    private static final int FIGURE = 22;
    private static final int CHOICE = 44;
    private static final int BESIDE = 12;

    static Columns of(int width, int em) {
        int mark = MARK * em;
        int right = width - GAP * em;
        if (width < NARROW * em) {
            return new Columns(width, em, mark, right - mark, mark, right - mark, true);
        }
        int name = Math.max(SHORTEST_NAME * em, Math.min(LONGEST_NAME * em, (int) (width * SHARE_OF_NAMES) - mark));
        int editorX = mark + name + GAP * em;
        return new Columns(width, em, mark, name, editorX, right - editorX, false);
    }

    int gap() {
        return GAP * em;
    }

    /** {@return the width of an editor} */
    int editor(Editor.Room room) {
        return switch (room) {
            case FIGURE -> Math.min(FIGURE * em, editors);
            case FIGURES -> Math.min(CHOICE * em, editors - BESIDE * em);
            case CHOICE -> Math.min(CHOICE * em, editors);
            case ALL -> editors;
        };
    }
}
