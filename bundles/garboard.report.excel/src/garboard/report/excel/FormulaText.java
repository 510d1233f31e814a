// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel;

import java.math.BigDecimal;
import java.util.function.UnaryOperator;

import garboard.report.Expression;

/** Writes an expression as a formula of the workbook. */
final class FormulaText {

    private final UnaryOperator<String> cellOfColumn;
    private final UnaryOperator<String> rangeOfColumn;

    /**
     * @param cellOfColumn reference of the cell in a column of the formula's own row
     * @param rangeOfColumn references of the cells of a column that a total sums up
     */
    FormulaText(UnaryOperator<String> cellOfColumn, UnaryOperator<String> rangeOfColumn) {
        this.cellOfColumn = cellOfColumn;
        this.rangeOfColumn = rangeOfColumn;
    }

    String of(Expression expression) {
        return switch (expression) {
            case Expression.Column column -> cellOfColumn.apply(column.key());
            case Expression.Total total -> "SUM(" + rangeOfColumn.apply(total.key()) + ")";
            case Expression.Constant constant -> BigDecimal.valueOf(constant.value()).toPlainString();
            case Expression.Sum sum -> of(sum.left()) + "+" + of(sum.right());
            case Expression.Difference difference -> of(difference.left()) + "-" + inner(difference.right());
            case Expression.Product product -> inner(product.left()) + "*" + inner(product.right());
            case Expression.Quotient quotient -> inner(quotient.left()) + "/" + inner(quotient.right());
            case Expression.Absolute absolute -> "ABS(" + of(absolute.of()) + ")";
            case Expression.Hypotenuse root -> "SQRT(" + inner(root.left()) + "^2+" + inner(root.right()) + "^2)";
            case Expression.TangentOfArcCosine tangent -> "TAN(ACOS(" + of(tangent.cosine()) + "))";
        };
    }

    private String inner(Expression expression) {
        boolean atom = switch (expression) {
            case Expression.Column c -> true;
            case Expression.Total t -> true;
            case Expression.Absolute a -> true;
            case Expression.Hypotenuse h -> true;
            case Expression.TangentOfArcCosine t -> true;
            case Expression.Constant c -> c.value() >= 0;
            default -> false;
        };
        return atom ? of(expression) : "(" + of(expression) + ")";
    }
}
