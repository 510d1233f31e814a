// SPDX-License-Identifier: EPL-2.0
package garboard.session.photo;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Optional;

import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

import garboard.session.photo.PictureException.Reason;

/** A picture that a record can keep: PNG or JPEG. Immutable; may be made on any thread, which for a camera's picture is worth while. */
public final class Picture {

    /** A longer edge than this, or more bytes, is more than paper and screen show. */
    private static final int LONGEST_EDGE = 2400;
    private static final int MOST_BYTES = 3_000_000;
    /** Enough for half a page at 300 dots to the inch. */
    private static final int SCALED_EDGE = 1800;
    private static final long MOST_PIXELS = 120_000_000;
    private static final float QUALITY = 0.85f;
    private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
    private static final byte[] JPEG = {(byte) 0xff, (byte) 0xd8, (byte) 0xff};

    private final byte[] data;
    private final String mediaType;
    private final int width;
    private final int height;
    private final Exif exif;

    private Picture(byte[] data, String mediaType, int width, int height, Exif exif) {
        this.data = data;
        this.mediaType = mediaType;
        this.width = width;
        this.height = height;
        this.exif = exif;
    }

    /**
     * {@return the picture in a file's bytes} A picture that a camera took on its side is turned upright.
     *
     * @throws PictureException when it is none that a record can keep
     */
    public static Picture of(byte[] bytes) throws PictureException {
        if (bytes.length == 0) {
            throw new PictureException(Reason.EMPTY);
        }
        boolean jpeg = begins(bytes, JPEG);
        if (!jpeg && !begins(bytes, PNG)) {
            throw new PictureException(isOtherPicture(bytes) ? Reason.OTHER_KIND : Reason.NO_PICTURE);
        }
        Exif exif = jpeg ? Exif.of(bytes) : Exif.NONE;
        Picture picture = measured(bytes, jpeg ? "image/jpeg" : "image/png", exif);
        return exif.turned() ? picture.drawn(1) : picture;
    }

    private static Picture measured(byte[] bytes, String mediaType, Exif exif) throws PictureException {
        ImageReader reader = ImageIO.getImageReadersByMIMEType(mediaType).next();
        try (var in = new MemoryCacheImageInputStream(new ByteArrayInputStream(bytes))) {
            reader.setInput(in);
            int width = reader.getWidth(0);
            int height = reader.getHeight(0);
            if ((long) width * height > MOST_PIXELS) {
                throw new PictureException(Reason.TOO_LARGE);
            }
            // Only decoding tells a whole file from one that was cut short.
            reader.read(0);
            return new Picture(bytes, mediaType, width, height, exif);
        } catch (IOException | RuntimeException broken) {
            throw new PictureException(Reason.BROKEN, broken);
        } finally {
            reader.dispose();
        }
    }

    private static boolean begins(byte[] bytes, byte[] signature) {
        return bytes.length >= signature.length && Arrays.equals(bytes, 0, signature.length, signature, 0, signature.length);
    }

    /** GIF, BMP, TIFF, WebP, and the pictures of telephones (HEIC, AVIF). */
    private static boolean isOtherPicture(byte[] bytes) {
        String head = new String(bytes, 0, Math.min(12, bytes.length), java.nio.charset.StandardCharsets.ISO_8859_1);
        return head.startsWith("GIF8") || head.startsWith("BM") || head.startsWith("II*\0") || head.startsWith("MM\0*")
            || head.startsWith("RIFF") && head.endsWith("WEBP")
            || head.length() == 12 && head.startsWith("ftyp", 4) && (head.startsWith("he", 8) || head.startsWith("mif", 8) || head.startsWith("avi", 8));
    }

    /** {@return the bytes, as they go into the record} */
    public byte[] data() {
        return data.clone();
    }

    public int bytes() {
        return data.length;
    }

    /** {@return {@code image/png} or {@code image/jpeg}} */
    public String mediaType() {
        return mediaType;
    }

    public int width() {
        return width;
    }

    public int height() {
        return height;
    }

    /** {@return the day that the camera noted} */
    public Optional<LocalDate> takenOn() {
        return exif.takenOn();
    }

    /** {@return whether it holds more than paper and screen can show, so that a smaller copy would do} */
    public boolean isHuge() {
        return Math.max(width, height) > LONGEST_EDGE || data.length > MOST_BYTES;
    }

    /** {@return a smaller copy, JPEG, upright} */
    public Picture scaledDown() throws PictureException {
        return drawn(Math.min(1, (double) SCALED_EDGE / Math.max(width, height)));
    }

    private Picture drawn(double scale) throws PictureException {
        BufferedImage source;
        try {
            source = ImageIO.read(new ByteArrayInputStream(data));
        } catch (IOException | RuntimeException broken) {
            throw new PictureException(Reason.BROKEN, broken);
        }
        // By halves first: one large step would leave out most pixels instead of averaging them.
        double left = scale;
        while (left <= 0.5) {
            source = scaled(source, 0.5);
            left *= 2;
        }
        BufferedImage upright = turned(scaled(source, left));
        byte[] jpeg = jpeg(upright);
        return new Picture(jpeg, "image/jpeg", upright.getWidth(), upright.getHeight(), exif.upright());
    }

    private static BufferedImage scaled(BufferedImage source, double scale) {
        int width = Math.max(1, (int) Math.round(source.getWidth() * scale));
        int height = Math.max(1, (int) Math.round(source.getHeight() * scale));
        var image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        graphics.drawImage(source, 0, 0, width, height, java.awt.Color.WHITE, null);
        graphics.dispose();
        return image;
    }

    private BufferedImage turned(BufferedImage source) {
        AffineTransform turn = exif.turn(source.getWidth(), source.getHeight());
        if (turn.isIdentity()) {
            return source;
        }
        boolean onItsSide = exif.onItsSide();
        var image = new BufferedImage(onItsSide ? source.getHeight() : source.getWidth(), onItsSide ? source.getWidth() : source.getHeight(),
            BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.drawImage(source, turn, null);
        graphics.dispose();
        return image;
    }

    private static byte[] jpeg(BufferedImage image) throws PictureException {
        ImageWriter writer = ImageIO.getImageWritersByMIMEType("image/jpeg").next();
        var bytes = new ByteArrayOutputStream();
        try (var out = new MemoryCacheImageOutputStream(bytes)) {
            writer.setOutput(out);
            ImageWriteParam how = writer.getDefaultWriteParam();
            how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            how.setCompressionQuality(QUALITY);
            writer.write(null, new IIOImage(image, null, null), how);
        } catch (IOException broken) {
            throw new PictureException(Reason.BROKEN, broken);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
