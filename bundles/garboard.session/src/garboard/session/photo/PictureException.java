// SPDX-License-Identifier: EPL-2.0
package garboard.session.photo;

/** A file cannot be kept as a photograph. The window says why in the person's language. */
public final class PictureException extends Exception {

    private static final long serialVersionUID = 1L;

    /** What is wrong with it. */
    public enum Reason {
        /** Nothing in it. */
        EMPTY,
        /** No picture at all. */
        NO_PICTURE,
        /** A picture, but neither PNG nor JPEG. */
        OTHER_KIND,
        /** Begins like a picture and cannot be read. */
        BROKEN,
        /** More pixels than can be worked with. */
        TOO_LARGE,
        /** The file itself could not be read. */
        UNREADABLE
    }

    private final Reason reason;

    public PictureException(Reason reason) {
        super(reason.name());
        this.reason = reason;
    }

    PictureException(Reason reason, Exception cause) {
        super(reason.name(), cause);
        this.reason = reason;
    }

    public Reason reason() {
        return reason;
    }
}
