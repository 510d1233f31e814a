// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import garboard.model.Consumable;
import garboard.model.Upkeep;
import garboard.model.UpkeepTask;
import garboard.quantity.TimeSpan;

/** What is to be done and when: the plan of this installation, and the usual one to fill the gaps in it. */
final class UpkeepSheet {

    private UpkeepSheet() {
    }

    static Optional<Sheet> of(Material material) {
        if (material.record().getGeneratorSet() == null && material.record().getUpkeep() == null) {
            return Optional.empty();
        }
        var blocks = new ArrayList<Block>();
        Optional.ofNullable(material.record().getUpkeep()).ifPresent(upkeep -> addPlan(upkeep, blocks));
        blocks.add(new Block.Heading("Usual plan (common practice; the maker's manual comes first)"));
        var table = Table.of(Table.text("task", "Task", 98), Table.text("done", "Done on, by", 28), Table.text("again", "Done on, by", 28),
            Table.text("third", "Done on, by", 28));
        table.group("Monthly or every 50 h, whichever comes first");
        addUsual(UsualUpkeep.Interval.MONTHLY, table);
        table.group("Yearly or every 200 to 250 h, whichever comes first");
        addUsual(UsualUpkeep.Interval.YEARLY, table);
        blocks.add(table.build());
        blocks.add(new Block.Heading("Impeller of the raw-water pump"));
        blocks.add(Block.body(UsualUpkeep.IMPELLER_RULE));
        return Optional.of(new Sheet("Upkeep", "Upkeep plan", Orientation.PORTRAIT, blocks));
    }

    private static void addUsual(UsualUpkeep.Interval interval, Table.Builder table) {
        UsualUpkeep.tasks().stream().filter(task -> task.interval() == interval)
            .forEach(task -> table.row(Cell.text(task.words()), Cell.BLANK, Cell.BLANK, Cell.BLANK));
    }

    private static void addPlan(Upkeep upkeep, List<Block> blocks) {
        if (!upkeep.getTasks().isEmpty()) {
            blocks.add(new Block.Heading("Plan of this installation"));
            var table = Table.of(Table.text("task", "Task", 60), Table.number("everyHours", "Every h", 16),
                Table.number("everyMonths", "Every months", 17), Table.day("lastDay", "Last done on", 22),
                Table.number("lastHours", "Last done at h", 19), Table.day("dueDay", "Due on", 24), Table.number("dueHours", "Due at h", 24));
            upkeep.getTasks().forEach(task -> addTask(task, table));
            blocks.add(table.build());
        }
        if (!upkeep.getConsumables().isEmpty()) {
            blocks.add(new Block.Heading("Spares and consumables"));
            var table = Table.of(Table.text("name", "Name", 82), Table.text("part", "Part number", 76), Table.number("quantity", "Quantity", 24));
            for (Consumable consumable : upkeep.getConsumables()) {
                table.row(Cell.text(Material.orEmpty(consumable.getName())), Cell.text(Material.orEmpty(consumable.getPartNumber())),
                    consumable.getQuantity() == null ? Cell.BLANK : Cell.count(consumable.getQuantity()));
            }
            blocks.add(table.build());
        }
    }

    private static void addTask(UpkeepTask task, Table.Builder table) {
        boolean hours = task.getEveryHours() != null && task.getLastDoneHours() != null;
        boolean days = task.getEveryMonths() != null && task.getLastDoneOn() != null;
        String note = Material.present(task.getNote()).map(text -> "\n" + text).orElse("");
        table.row(Cell.text(Material.orEmpty(task.getTask()) + note), hours(task.getEveryHours()),
            task.getEveryMonths() == null ? Cell.BLANK : Cell.count(task.getEveryMonths()), Days.cell(task.getLastDoneOn()),
            hours(task.getLastDoneHours()), days ? new Cell.DayAfter("lastDay", "everyMonths") : Cell.BLANK,
            hours ? new Cell.Computed(Expression.column("lastHours").plus(Expression.column("everyHours")), 0, false) : Cell.BLANK);
    }

    private static Cell hours(TimeSpan time) {
        return time == null ? Cell.BLANK : new Cell.Number(time.in("h"), 0);
    }
}
