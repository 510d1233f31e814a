// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.photo;

import java.io.ByteArrayInputStream;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;

import org.eclipse.swt.SWT;
import org.eclipse.swt.SWTException;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.widgets.Control;

import garboard.model.Photograph;

/**
 * The pictures of photographs, small enough to be kept, decoded in the background: a page must not wait for them. What cannot be decoded
 * has none.
 */
final class Thumbnails {

    private final int edge;
    private final Control owner;
    private final Runnable arrived;
    private final Map<byte[], Optional<Image>> images = new IdentityHashMap<>();
    private final Map<byte[], CompletableFuture<Void>> wanted = new IdentityHashMap<>();

    /** @param edge the longer edge in points @param arrived told on the window's thread whenever another picture can be shown */
    Thumbnails(Control owner, int edge, Runnable arrived) {
        this.owner = owner;
        this.edge = edge;
        this.arrived = arrived;
        owner.addListener(SWT.Dispose, event -> images.values().forEach(image -> image.ifPresent(Image::dispose)));
    }

    /** {@return the picture, when it has been decoded; asks for it otherwise} */
    Optional<Image> of(Photograph photograph) {
        byte[] data = photograph.getData();
        if (data == null) {
            return Optional.empty();
        }
        if (!images.containsKey(data) && !wanted.containsKey(data)) {
            wanted.put(data, CompletableFuture.supplyAsync(() -> decoded(data)).thenAccept(picture -> arrive(data, picture)));
        }
        return images.getOrDefault(data, Optional.empty());
    }

    /** {@return whether it was tried and found to be no picture} */
    boolean isBroken(Photograph photograph) {
        return photograph.getData() == null || images.containsKey(photograph.getData()) && images.get(photograph.getData()).isEmpty();
    }

    private static Optional<ImageData> decoded(byte[] data) {
        try {
            ImageData[] frames = new ImageLoader().load(new ByteArrayInputStream(data));
            return frames.length == 0 ? Optional.empty() : Optional.of(frames[0]);
        } catch (SWTException noPicture) {
            return Optional.empty();
        }
    }

    private void arrive(byte[] data, Optional<ImageData> picture) {
        if (owner.isDisposed()) {
            return;
        }
        owner.getDisplay().asyncExec(() -> {
            if (!owner.isDisposed()) {
                wanted.remove(data);
                images.put(data, picture.map(this::small));
                arrived.run();
            }
        });
    }

    /** Drawn, not scaled by leaving out pixels: lettering on a plate stays lettering. */
    private Image small(ImageData picture) {
        // On a HiDPI screen a point is up to three pixels.
        int pixels = edge * Math.max(1, (owner.getMonitor().getZoom() + 99) / 100);
        double scale = Math.min(1, (double) pixels / Math.max(picture.width, picture.height));
        var whole = new Image(owner.getDisplay(), picture);
        int width = Math.max(1, (int) (picture.width * scale));
        int height = Math.max(1, (int) (picture.height * scale));
        var image = new Image(owner.getDisplay(), width, height);
        var gc = new GC(image);
        gc.setInterpolation(SWT.HIGH);
        gc.drawImage(whole, 0, 0, picture.width, picture.height, 0, 0, width, height);
        gc.dispose();
        whole.dispose();
        return image;
    }
}
