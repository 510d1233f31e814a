// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel;

import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** What all sheets of one workbook share. */
record Common(Styles styles, SharedTexts texts) {

    static Common of(XSSFWorkbook workbook) {
        return new Common(new Styles(workbook), new SharedTexts());
    }
}
