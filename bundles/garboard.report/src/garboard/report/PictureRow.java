// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.util.List;

/**
 * Photographs side by side, each with its caption below; they stay on one page.
 *
 * @param photographs from left to right, at most two
 */
public record PictureRow(List<Photo> photographs) implements Block {

    /** How a photograph is stored. */
    public enum Format {
        JPEG, PNG
    }

    /**
     * A photograph as it was taken.
     *
     * @param data the bytes of the file, not to be changed
     * @param widthMm width on paper
     * @param heightMm height on paper
     * @param caption below it
     */
    public record Photo(byte[] data, Format format, double widthMm, double heightMm, String caption) {
    }

    public PictureRow {
        photographs = List.copyOf(photographs);
    }
}
