// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;

import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.MemoryCacheImageInputStream;

import garboard.model.Photograph;

/** The photographs, as they were taken, two to a row. */
final class PhotographsSheet {

    private static final double WIDTH_MM = 86;
    private static final double HEIGHT_MM = 68;

    private PhotographsSheet() {
    }

    static Optional<Sheet> of(Material material) {
        List<Photograph> all = material.record().getPhotographs();
        if (all.isEmpty()) {
            return Optional.empty();
        }
        var blocks = new ArrayList<Block>();
        var shown = new ArrayList<PictureRow.Photo>();
        var notShown = new ArrayList<String>();
        for (Photograph photograph : all) {
            photo(photograph).ifPresentOrElse(shown::add, () -> notShown.add(caption(photograph)));
        }
        for (int index = 0; index < shown.size(); index += 2) {
            blocks.add(new PictureRow(shown.subList(index, Math.min(index + 2, shown.size()))));
        }
        if (!notShown.isEmpty()) {
            blocks.add(Block.note("In the record, but in no form that a workbook can show (JPEG and PNG can be): " + String.join("; ", notShown)));
        }
        return Optional.of(new Sheet("Photographs", "Photographs", Orientation.PORTRAIT, blocks));
    }

    private static String caption(Photograph photograph) {
        return Material.present(photograph.getCaption()).orElse(Material.orEmpty(photograph.getId()))
            + (photograph.getTakenOn() == null ? "" : " (" + photograph.getTakenOn() + ")");
    }

    private static Optional<PictureRow.Photo> photo(Photograph photograph) {
        byte[] data = photograph.getData();
        if (data == null) {
            return Optional.empty();
        }
        try (var in = new MemoryCacheImageInputStream(new ByteArrayInputStream(data))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
            while (readers.hasNext()) {
                ImageReader reader = readers.next();
                Optional<PictureRow.Format> format = format(reader);
                if (format.isPresent()) {
                    reader.setInput(in);
                    double scale = Math.min(WIDTH_MM / reader.getWidth(0), HEIGHT_MM / reader.getHeight(0));
                    double widthMm = reader.getWidth(0) * scale;
                    double heightMm = reader.getHeight(0) * scale;
                    reader.dispose();
                    return Optional.of(new PictureRow.Photo(data, format.get(), widthMm, heightMm, caption(photograph)));
                }
            }
            return Optional.empty();
        } catch (IOException | RuntimeException noPicture) {
            // a file cut short, or one that only calls itself a picture: it is named as not shown
            return Optional.empty();
        }
    }

    private static Optional<PictureRow.Format> format(ImageReader reader) throws IOException {
        return switch (reader.getFormatName().toLowerCase(java.util.Locale.ROOT)) {
            case "jpeg" -> Optional.of(PictureRow.Format.JPEG);
            case "png" -> Optional.of(PictureRow.Format.PNG);
            default -> Optional.empty();
        };
    }
}
