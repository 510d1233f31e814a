// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import garboard.model.AcOutput;
import garboard.model.ElectricalLoad;
import garboard.model.GarboardPackage;
import garboard.model.GeneratorSet;
import garboard.quantity.Quantity;
import garboard.quantity.Ratio;

/** The connected loads and what the set must give at once, with the arithmetic open to the reader. */
final class LoadAnalysisSheet {

    private static final double WATTS_PER_KILOWATT = 1000;
    private static final Expression DEMAND = Expression.column("demand");

    private LoadAnalysisSheet() {
    }

    static Optional<Sheet> of(Material material) {
        AcOutput output = material.record().getAcOutput();
        if (output == null || output.getLoads().isEmpty()) {
            return Optional.empty();
        }
        var blocks = new ArrayList<Block>();
        blocks.add(Block.note("Input power = power / efficiency. Demand = input x demand factor x counted. Reactive power = demand x tan(acos(power "
            + "factor)). Of loads that exclude each other only the largest demand is counted. A factor that is not entered is taken as 1; a "
            + "load without a condition counts in every condition."));
        Set<String> conditions = conditions(output.getLoads());
        for (String condition : conditions) {
            if (!condition.isEmpty()) {
                blocks.add(new Block.Heading("Condition: " + condition));
            }
            blocks.add(table(loadsIn(output.getLoads(), condition), material));
        }
        return Optional.of(new Sheet("Load analysis", "Load analysis", Orientation.LANDSCAPE, blocks));
    }

    private static Set<String> conditions(List<ElectricalLoad> loads) {
        var conditions = new LinkedHashSet<String>();
        loads.forEach(load -> Material.present(load.getCondition()).ifPresent(conditions::add));
        return conditions.isEmpty() ? Set.of("") : conditions;
    }

    private static List<ElectricalLoad> loadsIn(List<ElectricalLoad> loads, String condition) {
        return loads.stream().filter(load -> Material.present(load.getCondition()).map(condition::equals).orElse(true)).toList();
    }

    private static Table table(List<ElectricalLoad> loads, Material material) {
        var table = Table.of(Table.text("load", "Load", 56), Table.text("kind", "Kind", 24), Table.text("phase", "Phase", 14),
            Table.number("power", "Power kW", 19), Table.number("efficiency", "Efficiency", 19), Table.number("factor", "Power factor", 21),
            Table.number("use", "Demand factor", 23), Table.number("counted", "Counted", 17), Table.number("input", "Input kW", 19),
            Table.number("demand", "Demand kW", 20), Table.number("reactive", "Demand kvar", 19), Table.number("apparent", "Demand kVA", 18));
        Set<ElectricalLoad> excluded = ExclusiveLoads.leftOut(loads);
        loads.forEach(load -> table.row(row(load, !excluded.contains(load), material)));
        totals(table, material);
        return table.build();
    }

    private static List<Cell> row(ElectricalLoad load, boolean counted, Material material) {
        Expression input = Expression.column("power").over(Expression.column("efficiency"));
        Expression demand = Expression.column("input").times(Expression.column("use")).times(Expression.column("counted"));
        Expression reactive = DEMAND.times(new Expression.TangentOfArcCosine(Expression.column("factor")));
        return List.of(Cell.text(Material.present(load.getName()).orElse(Material.orEmpty(load.getId()))),
            Cell.text(load.eIsSet(GarboardPackage.Literals.ELECTRICAL_LOAD__KIND) ? material.labels().label(load.getKind()) : ""),
            Cell.text(Material.orEmpty(load.getPhase())), kilowatts(load.getPower()), factor(load.getEfficiency()),
            factor(load.getPowerFactor()), factor(load.getDemandFactor()), Cell.count(counted ? 1 : 0), new Cell.Computed(input, 2, false),
            new Cell.Computed(demand, 2, false), new Cell.Computed(reactive, 2, false),
            new Cell.Computed(new Expression.Hypotenuse(DEMAND, Expression.column("reactive")), 2, false));
    }

    private static void totals(Table.Builder table, Material material) {
        Cell apparent = new Cell.Computed(new Expression.Hypotenuse(DEMAND, Expression.column("reactive")), 2, false);
        table.total(Map.of("load", Cell.strong("All"), "input", total("input"), "demand", total("demand"), "reactive", total("reactive"),
            "apparent", apparent));
        GeneratorSet set = material.record().getGeneratorSet();
        if (set == null) {
            return;
        }
        var rating = new HashMap<String, Cell>();
        var share = new HashMap<String, Cell>();
        if (set.getRatedPower() != null && set.getRatedPower().si() > 0) {
            rating.put("demand", kilowatts(set.getRatedPower()));
            share.put("demand", share("demand", set.getRatedPower()));
        }
        if (set.getRatedApparentPower() != null && set.getRatedApparentPower().si() > 0) {
            rating.put("apparent", kilowatts(set.getRatedApparentPower()));
            share.put("apparent", new Cell.Computed(new Expression.Hypotenuse(Expression.total("demand"), Expression.total("reactive"))
                .over(Expression.constant(set.getRatedApparentPower().si() / WATTS_PER_KILOWATT)).times(Expression.constant(100)), 0, false));
        }
        if (!rating.isEmpty()) {
            rating.put("load", Cell.strong("Rating of the set"));
            share.put("load", Cell.strong("Demand in % of the rating"));
            table.total(rating);
            table.total(share);
        }
    }

    private static Cell share(String column, Quantity<?> rating) {
        return new Cell.Computed(
            Expression.total(column).over(Expression.constant(rating.si() / WATTS_PER_KILOWATT)).times(Expression.constant(100)), 0, false);
    }

    private static Cell total(String column) {
        return new Cell.Computed(Expression.total(column), 2, false);
    }

    private static Cell kilowatts(Quantity<?> power) {
        return power == null ? Cell.BLANK : new Cell.Number(power.si() / WATTS_PER_KILOWATT, 2);
    }

    private static Cell factor(Ratio ratio) {
        return ratio == null || ratio.si() <= 0 ? new Cell.Number(1, 2) : new Cell.Number(ratio.si(), 2);
    }
}
