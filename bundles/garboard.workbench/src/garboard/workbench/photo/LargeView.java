// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.photo;

import java.io.ByteArrayInputStream;
import java.util.Optional;

import org.eclipse.swt.SWT;
import org.eclipse.swt.SWTException;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;

import garboard.model.Photograph;
import garboard.workbench.Desk;

/** One photograph as wide as the sheet, but no larger than it is. */
final class LargeView extends Canvas {

    private Optional<Image> image = Optional.empty();

    LargeView(Composite parent, Desk desk) {
        super(parent, SWT.DOUBLE_BUFFERED | SWT.NO_FOCUS);
        setData("garboard.id", "photographs.large");
        addListener(SWT.Paint, event -> image.ifPresent(picture -> {
            event.gc.setInterpolation(SWT.HIGH);
            fit(event.gc, picture, getClientArea());
            event.gc.setForeground(desk.palette().line());
        }));
        addListener(SWT.Dispose, event -> image.ifPresent(Image::dispose));
    }

    @Override
    protected void checkSubclass() {
        // It only measures itself otherwise.
    }

    @Override
    public Point computeSize(int widthHint, int heightHint, boolean changed) {
        if (image.isEmpty()) {
            return new Point(widthHint == SWT.DEFAULT ? 0 : widthHint, 0);
        }
        Rectangle size = image.get().getBounds();
        int width = widthHint == SWT.DEFAULT ? size.width : Math.min(widthHint, size.width);
        return new Point(widthHint == SWT.DEFAULT ? width : widthHint, width * size.height / Math.max(1, size.width));
    }

    void show(Optional<Photograph> photograph) {
        image.ifPresent(Image::dispose);
        image = photograph.map(Photograph::getData).flatMap(data -> decoded(data)).map(found -> new Image(getDisplay(), found));
        redraw();
        requestLayout();
    }

    private static Optional<ImageData> decoded(byte[] data) {
        try {
            ImageData[] frames = new ImageLoader().load(new ByteArrayInputStream(data));
            return frames.length == 0 ? Optional.empty() : Optional.of(frames[0]);
        } catch (SWTException noPicture) {
            return Optional.empty(); // the gallery says so
        }
    }

    /** Draws a picture into a frame, as large as it fits, in its own proportions. */
    static void fit(GC gc, Image picture, Rectangle frame) {
        Rectangle size = picture.getBounds();
        double scale = Math.min((double) frame.width / size.width, (double) frame.height / size.height);
        int width = Math.max(1, (int) (size.width * scale));
        int height = Math.max(1, (int) (size.height * scale));
        gc.drawImage(picture, 0, 0, size.width, size.height, frame.x + (frame.width - width) / 2, frame.y + (frame.height - height) / 2,
            width, height);
    }
}
