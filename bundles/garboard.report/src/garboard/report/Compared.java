// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.util.List;
import java.util.Optional;

import garboard.checks.Verdict;
import garboard.quantity.Quantity;

/** Measured value, limit, unit, margin and margin in per cent of a verdict as five cells of a row, the margins as formulas. */
final class Compared {

    static final String MEASURED = "measured";
    static final String LIMIT = "limit";
    static final String MARGIN = "margin";
    private static final int MOST_DECIMALS = 4;
    private static final double HUNDRED = 100;

    private Compared() {
    }

    static List<Cell> cells(Verdict verdict, Figures figures) {
        Optional<Quantity<?>> limit = verdict.limit().map(found -> found.value());
        Optional<Quantity<?>> measured = verdict.measured().map(found -> found);
        Optional<String> unit = limit.filter(quantity -> quantity.si() != 0).or(() -> measured).or(() -> limit).map(figures::unit);
        if (unit.isEmpty()) {
            return List.of(Cell.BLANK, Cell.BLANK, Cell.BLANK, Cell.BLANK, Cell.BLANK);
        }
        Optional<Figures.Shown> measuredShown = measured.map(quantity -> figures.shown(quantity, unit.get()));
        Optional<Figures.Shown> limitShown = limit.map(quantity -> figures.shown(quantity, unit.get()));
        int decimals = Math.min(MOST_DECIMALS,
            Math.max(measuredShown.map(Figures.Shown::decimals).orElse(0), limitShown.map(Figures.Shown::decimals).orElse(0)));
        boolean both = measured.isPresent() && limit.isPresent() && verdict.margin().isPresent();
        Expression margin = both && atMost(verdict) ? Expression.column(LIMIT).minus(Expression.column(MEASURED))
            : Expression.column(MEASURED).minus(Expression.column(LIMIT));
        boolean relative = both && verdict.margin().get().perCent().isPresent();
        return List.of(number(measuredShown, decimals), number(limitShown, decimals), Cell.text(Figures.sign(unit.get())),
            both ? new Cell.Computed(margin, decimals, true) : Cell.BLANK,
            relative ? new Cell.Computed(Expression.column(MARGIN).over(Expression.column(LIMIT).absolute()).times(Expression.constant(HUNDRED)),
                0, true) : Cell.BLANK);
    }

    private static Cell number(Optional<Figures.Shown> shown, int decimals) {
        return shown.<Cell>map(found -> new Cell.Number(found.value(), decimals)).orElse(Cell.BLANK);
    }

    /** Whether the verdict held the measured value against an upper limit: its margin then runs the other way. */
    private static boolean atMost(Verdict verdict) {
        double measured = verdict.measured().orElseThrow().si();
        double limit = verdict.limit().orElseThrow().value().si();
        double margin = verdict.margin().orElseThrow().distance().si();
        return Math.abs(limit - measured - margin) < Math.abs(measured - limit - margin);
    }
}
