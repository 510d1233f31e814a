// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import garboard.checks.Missing;
import garboard.checks.Remedy;
import garboard.checks.Standing;
import garboard.checks.Verdict;
import garboard.model.Acceptance;

/** What falls short, is borderline, cannot be told or was accepted: why it matters and what would make it meet. */
final class ShortfallsSheet {

    static final String NAME = "Shortfalls";
    private static final List<Standing> TOLD_AT_LENGTH =
        List.of(Standing.CHECK_BROKE, Standing.FALLS_SHORT, Standing.BORDERLINE, Standing.ACCEPTED);

    private ShortfallsSheet() {
    }

    static Optional<Sheet> of(Material material) {
        var blocks = new ArrayList<Block>();
        List<Verdict> worstFirst = material.evaluation().worstFirst();
        for (Standing standing : TOLD_AT_LENGTH) {
            List<Verdict> verdicts = worstFirst.stream().filter(verdict -> verdict.standing() == standing).toList();
            if (!verdicts.isEmpty()) {
                blocks.add(new Block.Heading(heading(standing, verdicts.size())));
                verdicts.forEach(verdict -> blocks.add(card(verdict, material)));
            }
        }
        addUntold(material, blocks);
        addAcceptances(material, blocks);
        return blocks.isEmpty() ? Optional.empty()
            : Optional.of(new Sheet(NAME, "Shortfalls and acceptances", Orientation.PORTRAIT, blocks));
    }

    private static String heading(Standing standing, int count) {
        String word = standing.label();
        return Character.toUpperCase(word.charAt(0)) + word.substring(1) + " (" + count + ")";
    }

    /** One verdict: a line that names it, then what is to be said of it. */
    private static Table card(Verdict verdict, Material material) {
        var table = Table.of(Table.text("mark", "", 28), Table.text("text", "", 154));
        table.group(verdict.check().title());
        table.row(new Cell.Stands(verdict.standing()), Cell.strong(Material.sentence(verdict)));
        row(table, "Gravity, where", verdict.check().gravity().label() + "; " + material.subject(verdict));
        row(table, "Why it matters", verdict.check().why());
        row(table, "Remedy", verdict.remedy().map(Remedy::text).orElse(verdict.check().remedyInWords()));
        row(table, "Limit", limit(verdict, material));
        row(table, "Not entered", verdict.missing().stream().map(Missing::label).collect(Collectors.joining("; ")));
        row(table, "Acceptance", verdict.acceptance().orElse(""));
        row(table, "Basis, check", verdict.check().basis() + (verdict.check().basis().otherFigures().isEmpty() ? ""
            : ". Other figures: " + verdict.check().basis().otherFigures()) + "  \u00b7  " + verdict.check().id());
        return table.build();
    }

    private static void row(Table.Builder table, String label, String text) {
        if (!text.isEmpty()) {
            table.row(Cell.faint(label), Cell.text(text));
        }
    }

    private static String limit(Verdict verdict, Material material) {
        return verdict.limit().map(limit -> verdict.measured().map(measured -> material.figures().text(measured) + " measured, ").orElse("")
            + material.figures().text(limit.value()) + " limit (" + limit.origin() + ")").orElse("");
    }

    private static void addUntold(Material material, List<Block> into) {
        List<Verdict> untold = material.evaluation().worstFirst().stream()
            .filter(verdict -> verdict.standing() == Standing.CANNOT_TELL).toList();
        if (untold.isEmpty()) {
            return;
        }
        into.add(new Block.Heading(heading(Standing.CANNOT_TELL, untold.size())));
        var table = Table.of(Table.text("gravity", "Gravity", 28), Table.text("title", "What must hold", 64),
            Table.text("missing", "Not entered", 52), Table.text("check", "Check", 38));
        untold.forEach(verdict -> table.row(Cell.text(verdict.check().gravity().label()), Cell.text(verdict.check().title()),
            Cell.text(missing(verdict)), Cell.text(verdict.check().id())));
        into.add(table.build());
    }

    private static String missing(Verdict verdict) {
        return verdict.missing().isEmpty() ? Material.sentence(verdict)
            : verdict.missing().stream().map(Missing::label).collect(Collectors.joining("\n"));
    }

    private static void addAcceptances(Material material, List<Block> into) {
        List<Acceptance> acceptances = material.record().getAcceptances();
        if (acceptances.isEmpty()) {
            return;
        }
        into.add(new Block.Heading("Acceptances on record"));
        var table = Table.of(Table.text("check", "Check", 40), Table.text("reason", "Reason", 66), Table.text("by", "Accepted by", 36),
            Table.day("on", "On", 20), Table.day("until", "Until", 20));
        acceptances.forEach(acceptance -> table.row(Cell.text(Material.orEmpty(acceptance.getCheck())),
            Cell.text(Material.orMissing(acceptance.getReason())), Cell.text(Material.orMissing(acceptance.getAcceptedBy())),
            Days.cell(acceptance.getAcceptedOn()), Days.cell(acceptance.getUntil())));
        into.add(table.build());
    }
}
