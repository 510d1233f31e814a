// SPDX-License-Identifier: EPL-2.0
package garboard.bench;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.apache.poi.xssf.usermodel.XSSFPicture;
import org.apache.poi.xssf.usermodel.XSSFShape;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

import garboard.report.Block;
import garboard.report.Picture;
import garboard.report.PictureRow;
import garboard.report.Report;
import garboard.report.Sheet;

/** Reports whose drawings are ready-made: where a drawing was to be made, its image stands as a photograph does. */
final class Drawn {

    private Drawn() {
    }

    /** @param workbook the same report written, in which the drawings are found by their words */
    static Report of(Report report, byte[] workbook) throws IOException {
        Map<String, byte[]> images = images(workbook);
        List<Sheet> sheets = report.sheets().stream().map(sheet -> new Sheet(sheet.name(), sheet.heading(), sheet.orientation(),
            sheet.blocks().stream().map(block -> block instanceof Picture picture ? photograph(picture, images) : block).toList())).toList();
        return new Report(report.title(), report.recordNumber(), report.subject(), sheets, report.verdicts(), report.options());
    }

    private static Block photograph(Picture picture, Map<String, byte[]> images) {
        byte[] image = images.get(picture.alternative());
        if (image == null) {
            throw new IllegalStateException("This machine cannot draw: " + picture.name() + " is not in the workbook");
        }
        return new PictureRow(
            List.of(new PictureRow.Photo(image, PictureRow.Format.PNG, picture.widthMm(), picture.heightMm(), picture.name())));
    }

    private static Map<String, byte[]> images(byte[] bytes) throws IOException {
        var images = new HashMap<String, byte[]>();
        try (var workbook = new XSSFWorkbook(new ByteArrayInputStream(bytes))) {
            for (int index = 0; index < workbook.getNumberOfSheets(); index++) {
                XSSFSheet sheet = workbook.getSheetAt(index);
                if (sheet.getDrawingPatriarch() != null) {
                    for (XSSFShape shape : sheet.getDrawingPatriarch().getShapes()) {
                        if (shape instanceof XSSFPicture picture) {
                            images.put(picture.getCTPicture().getNvPicPr().getCNvPr().getDescr(), picture.getPictureData().getData());
                        }
                    }
                }
            }
        }
        return images;
    }
}
