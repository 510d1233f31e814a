// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;

import javax.imageio.ImageIO;
import javax.imageio.stream.MemoryCacheImageOutputStream;

import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFPicture;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

import garboard.report.Picture;
import garboard.report.PictureRow;

/** Renders drawings and puts pictures over the rows that the layout left free for them. */
final class PictureWriter {

    private static final double MM_PER_INCH = 25.4;
    /** Fine enough for small letters on paper. */
    private static final double DOTS_PER_INCH = 200;

    private final XSSFSheet target;
    private final SheetLayout layout;

    PictureWriter(XSSFSheet target, SheetLayout layout) {
        this.target = target;
        this.layout = layout;
    }

    void draw(SheetLayout.Drawn drawn) {
        Picture picture = drawn.picture();
        try {
            place(png(picture), XSSFWorkbook.PICTURE_TYPE_PNG, drawn.line(), new double[] {0, picture.widthMm(), picture.heightMm()},
                picture.alternative());
        } catch (RuntimeException | LinkageError | InternalError noDrawing) {
            // A machine without any font cannot draw; the report is worth more than its drawings, and says what is missing.
            target.getRow(drawn.line()).createCell(0).setCellValue("This drawing could not be made here (" + noDrawing
                + "). In words: " + picture.alternative());
        }
    }

    void show(SheetLayout.Photos photos) {
        List<PictureRow.Photo> row = photos.row().photographs();
        double half = new Anchors(layout).widthMm() / 2;
        for (int index = 0; index < row.size(); index++) {
            PictureRow.Photo photo = row.get(index);
            int type = photo.format() == PictureRow.Format.PNG ? XSSFWorkbook.PICTURE_TYPE_PNG : XSSFWorkbook.PICTURE_TYPE_JPEG;
            place(photo.data(), type, photos.line(), new double[] {index * half, photo.widthMm(), photo.heightMm()}, photo.caption());
        }
    }

    /** @param leftWidthHeightMm distance from the left edge, width, height */
    private void place(byte[] data, int type, int line, double[] leftWidthHeightMm, String alternative) {
        int index = target.getWorkbook().addPicture(data, type);
        XSSFClientAnchor anchor = new Anchors(layout).over(line, leftWidthHeightMm);
        XSSFPicture picture = target.createDrawingPatriarch().createPicture(anchor, index);
        picture.getCTPicture().getNvPicPr().getCNvPr().setDescr(alternative);
    }

    private static byte[] png(Picture picture) {
        double dotsPerMm = DOTS_PER_INCH / MM_PER_INCH;
        var image = new BufferedImage((int) Math.ceil(picture.widthMm() * dotsPerMm), (int) Math.ceil(picture.heightMm() * dotsPerMm),
            BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        try {
            graphics.setColor(Color.WHITE);
            graphics.fillRect(0, 0, image.getWidth(), image.getHeight());
            graphics.setColor(Color.BLACK);
            graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
            graphics.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
            graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
            graphics.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
            graphics.scale(dotsPerMm, dotsPerMm);
            picture.painter().accept(graphics);
        } finally {
            graphics.dispose();
        }
        var bytes = new ByteArrayOutputStream();
        try (var stream = new MemoryCacheImageOutputStream(bytes)) {
            ImageIO.write(image, "png", stream);
        } catch (IOException inMemory) {
            throw new IllegalStateException(inMemory);
        }
        return bytes.toByteArray();
    }
}
