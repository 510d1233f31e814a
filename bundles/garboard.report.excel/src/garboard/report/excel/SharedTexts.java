// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel;

import java.util.HashMap;
import java.util.Map;

import org.apache.poi.xssf.usermodel.XSSFCell;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.STCellType;

/**
 * The texts of one workbook, which stand in a table of their own and come again and again: standings, units, systems. POI finds out that
 * a text is there already by writing it as XML each time; here its place is remembered.
 */
final class SharedTexts {

    private final Map<String, String> places = new HashMap<>();

    void put(XSSFCell cell, String text) {
        String place = places.get(text);
        if (place == null) {
            cell.setCellValue(text);
            places.put(text, cell.getCTCell().getV());
        } else {
            cell.getCTCell().setT(STCellType.S);
            cell.getCTCell().setV(place);
        }
    }
}
