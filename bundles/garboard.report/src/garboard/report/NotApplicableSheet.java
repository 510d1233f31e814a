// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import garboard.checks.Standing;
import garboard.checks.Verdict;

/** The checks that do not concern this installation, by the reason. */
final class NotApplicableSheet {

    static final String NAME = "Not applicable";

    private NotApplicableSheet() {
    }

    static Optional<Sheet> of(Material material) {
        List<Verdict> verdicts = material.evaluation().with(Standing.DOES_NOT_APPLY);
        if (verdicts.isEmpty()) {
            return Optional.empty();
        }
        var byReason = new LinkedHashMap<String, Map<String, Long>>();
        verdicts.forEach(verdict -> byReason.computeIfAbsent(Material.sentence(verdict), reason -> new LinkedHashMap<>())
            .merge(verdict.check().id(), 1L, Long::sum));
        var table = Table.of(Table.text("reason", "Why", 72), Table.text("checks", "Checks", 96), Table.number("count", "Verdicts", 14)).repeated();
        byReason.forEach((reason, checks) -> table.row(Cell.text(reason), Cell.text(checks.entrySet().stream().map(NotApplicableSheet::named)
            .collect(Collectors.joining(", "))), Cell.count(checks.values().stream().mapToLong(Long::longValue).sum())));
        table.total(Map.of("reason", Cell.strong("All"), "count", new Cell.Computed(Expression.total("count"), 0, false)));
        return Optional.of(new Sheet(NAME, "Checks that do not apply", Orientation.PORTRAIT, List.of(table.build())));
    }

    private static String named(Map.Entry<String, Long> check) {
        return check.getKey() + (check.getValue() == 1 ? "" : " (" + check.getValue() + " places)");
    }
}
