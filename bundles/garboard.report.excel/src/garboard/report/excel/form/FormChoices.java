// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel.form;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.DataValidationHelper;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddressList;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Drop-down lists: each list of choices once, in a column of a hidden sheet, under a name. */
final class FormChoices {

    private final XSSFWorkbook workbook;
    private final XSSFSheet sheet;
    private final Map<String, String> names = new HashMap<>();

    FormChoices(XSSFWorkbook workbook) {
        this.workbook = workbook;
        this.sheet = workbook.createSheet(FormGrid.CHOICES);
    }

    /** Offers the choices in the cells of a row; anything else may be typed too, the reader judges it. */
    void offer(XSSFSheet target, String list, List<String> choices, int row, int firstColumn, int lastColumn) {
        String name = names.computeIfAbsent(list, key -> define(key, choices));
        DataValidationHelper helper = target.getDataValidationHelper();
        DataValidation validation = helper.createValidation(helper.createFormulaListConstraint(name),
            new CellRangeAddressList(row, row, firstColumn, lastColumn));
        validation.setShowErrorBox(false);
        validation.setSuppressDropDownArrow(true);
        target.addValidationData(validation);
    }

    private String define(String list, List<String> choices) {
        int column = names.size();
        for (int index = 0; index < choices.size(); index++) {
            Row row = sheet.getRow(index) == null ? sheet.createRow(index) : sheet.getRow(index);
            row.createCell(column).setCellValue(choices.get(index));
        }
        Name name = workbook.createName();
        name.setNameName("choices_" + list);
        String letter = CellReference.convertNumToColString(column);
        name.setRefersToFormula("'" + FormGrid.CHOICES + "'!$" + letter + "$1:$" + letter + "$" + choices.size());
        return name.getNameName();
    }

    void hide() {
        workbook.setSheetHidden(workbook.getSheetIndex(sheet), true);
    }
}
