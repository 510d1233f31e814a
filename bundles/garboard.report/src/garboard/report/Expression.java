// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.util.function.ToDoubleFunction;

/**
 * Arithmetic on the cells of one row of a table, written into the workbook as a formula and worked out here for the value that the
 * workbook shows before anything is recalculated.
 */
public sealed interface Expression {

    /** The number in a column of the same row. */
    record Column(String key) implements Expression {
    }

    /** The sum of a column over the rows of the table above, groups and totals left out. */
    record Total(String key) implements Expression {
    }

    /** A fixed number. */
    record Constant(double value) implements Expression {
    }

    /** left + right. */
    record Sum(Expression left, Expression right) implements Expression {
    }

    /** left - right. */
    record Difference(Expression left, Expression right) implements Expression {
    }

    /** left * right. */
    record Product(Expression left, Expression right) implements Expression {
    }

    /** left / right. */
    record Quotient(Expression left, Expression right) implements Expression {
    }

    /** The size without the sign. */
    record Absolute(Expression of) implements Expression {
    }

    /** The root of left squared plus right squared. */
    record Hypotenuse(Expression left, Expression right) implements Expression {
    }

    /** The tangent of the angle whose cosine is this: reactive over active power. */
    record TangentOfArcCosine(Expression cosine) implements Expression {
    }

    static Expression column(String key) {
        return new Column(key);
    }

    static Expression total(String key) {
        return new Total(key);
    }

    static Expression constant(double value) {
        return new Constant(value);
    }

    default Expression plus(Expression right) {
        return new Sum(this, right);
    }

    default Expression minus(Expression right) {
        return new Difference(this, right);
    }

    default Expression times(Expression right) {
        return new Product(this, right);
    }

    default Expression over(Expression right) {
        return new Quotient(this, right);
    }

    default Expression absolute() {
        return new Absolute(this);
    }

    /**
     * {@return the number it comes to}
     *
     * @param column the number in a column of the same row
     * @param total the sum of a column
     */
    default double value(ToDoubleFunction<String> column, ToDoubleFunction<String> total) {
        return switch (this) {
            case Column c -> column.applyAsDouble(c.key);
            case Total t -> total.applyAsDouble(t.key);
            case Constant c -> c.value;
            case Sum s -> s.left.value(column, total) + s.right.value(column, total);
            case Difference d -> d.left.value(column, total) - d.right.value(column, total);
            case Product p -> p.left.value(column, total) * p.right.value(column, total);
            case Quotient q -> q.left.value(column, total) / q.right.value(column, total);
            case Absolute a -> Math.abs(a.of.value(column, total));
            case Hypotenuse h -> root(h.left.value(column, total), h.right.value(column, total));
            case TangentOfArcCosine t -> Math.tan(Math.acos(t.cosine.value(column, total)));
        };
    }

    private static double root(double left, double right) {
        return Math.sqrt(left * left + right * right); // as the workbook's own formula has it
    }
}
