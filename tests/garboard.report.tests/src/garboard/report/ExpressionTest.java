// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.data.Offset.offset;

import java.util.Map;

import org.junit.jupiter.api.Test;

class ExpressionTest {

    private static final Expression A = Expression.column("a");
    private static final Expression B = Expression.column("b");

    private static double value(Expression expression) {
        Map<String, Double> columns = Map.of("a", 3.0, "b", -4.0, "pf", 0.8);
        Map<String, Double> totals = Map.of("a", 10.0);
        return expression.value(columns::get, totals::get);
    }

    @Test
    void worksOutEveryOperation() {
        assertThat(value(A.plus(B))).isEqualTo(-1);
        assertThat(value(A.minus(B))).isEqualTo(7);
        assertThat(value(A.times(B))).isEqualTo(-12);
        assertThat(value(A.over(B))).isEqualTo(-0.75);
        assertThat(value(B.absolute())).isEqualTo(4);
        assertThat(value(new Expression.Hypotenuse(A, B))).isEqualTo(5); // the 3-4-5 triangle
        assertThat(value(new Expression.TangentOfArcCosine(Expression.column("pf")))).isCloseTo(0.75, offset(1e-12)); // 0.6 / 0.8
        assertThat(value(Expression.total("a").over(Expression.constant(4)))).isEqualTo(2.5);
    }

    @Test
    void tableSumsBodyRowsAboveOnly() {
        Table table = Table.of(Table.text("t", "T", 20), Table.number("a", "A", 20)).group("Group")
            .row(Cell.text("one"), new Cell.Number(1, 0)).row(Cell.text("two"), new Cell.Number(2, 0))
            .total(Cell.text("sum"), new Cell.Computed(Expression.total("a"), 0, false))
            .row(Cell.text("three"), new Cell.Number(30, 0))
            .total(Cell.text("sum"), new Cell.Computed(Expression.total("a"), 0, false)).build();
        assertThat(table.number(3, "a")).hasValue(3);
        assertThat(table.number(5, "a")).hasValue(33);
        assertThat(table.number(0, "a")).isEmpty();
        assertThat(table.number(1, "t")).isEmpty();
    }

    @Test
    void tableRefusesARowOfTheWrongLength() {
        var builder = Table.of(Table.text("t", "T", 20), Table.number("a", "A", 20)).row(Cell.text("alone"));
        assertThatThrownBy(builder::build).isInstanceOf(IllegalArgumentException.class).hasMessageContaining("1 cells").hasMessageContaining("2 columns");
    }

    @Test
    void sheetRefusesANameThatNoWorkbookTakes() {
        assertThatThrownBy(() -> new Sheet("a/b", "A", Orientation.PORTRAIT, java.util.List.of())).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Sheet("x".repeat(32), "A", Orientation.PORTRAIT, java.util.List.of()))
            .isInstanceOf(IllegalArgumentException.class);
    }
}
