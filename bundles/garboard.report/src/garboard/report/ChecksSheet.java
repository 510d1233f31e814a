// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

import garboard.checks.Basis;
import garboard.checks.Standing;
import garboard.checks.Verdict;
import garboard.model.GarboardPackage;

/** Every check with what was measured, the limit, the margin and where the rule comes from. */
final class ChecksSheet {

    static final String NAME = "Checks";

    private ChecksSheet() {
    }

    static Optional<Sheet> of(Material material) {
        Map<String, List<Verdict>> systems = bySystem(material);
        if (systems.isEmpty()) {
            return Optional.empty();
        }
        var table = Table.of(Table.standing(20.5), Table.text("check", "Check", 28), Table.text("title", "What must hold", 39),
            Table.text("subject", "Subject", 25), Table.text("found", "Found", 43.5), Table.number(Compared.MEASURED, "Measured", 15.5),
            Table.number(Compared.LIMIT, "Limit", 13.5), Table.unit("unit", 11.5), Table.number(Compared.MARGIN, "Margin", 13),
            Table.number("perCent", "Margin %", 11.5), Table.text("gravity", "Gravity", 18.5), Table.text("basis", "Basis", 29.5)).repeated().size(Table.Size.SMALL);
        systems.forEach((system, verdicts) -> {
            table.group(system);
            verdicts.forEach(verdict -> table.row(row(verdict, material)));
        });
        return Optional.of(new Sheet(NAME, "Checks", Orientation.LANDSCAPE, List.of(
            Block.note("A margin is the distance from the limit, positive on the right side. Borderline: the limit lies within the accuracy of "
                + "the measured value. Cannot tell is no pass. The basis names where the rule comes from and how its text reached us; "
                + "the maker's own limit takes the place of a general figure where it is entered, never of a regulation. Checks that do not apply "
                + "stand on the sheet " + NotApplicableSheet.NAME + "."),
            table.build())));
    }

    /**
     * The verdicts that apply by the part of the installation that they speak of, in the order of a walk; within it as the catalogue has
     * them.
     */
    private static Map<String, List<Verdict>> bySystem(Material material) {
        var systems = new LinkedHashMap<String, List<Verdict>>();
        for (EStructuralFeature system : GarboardPackage.Literals.COMMISSIONING_RECORD.getEAllContainments()) {
            systems.put(material.labels().label(system), new ArrayList<>());
        }
        systems.put("Whole record", new ArrayList<>());
        material.evaluation().verdicts().stream().filter(verdict -> verdict.standing() != Standing.DOES_NOT_APPLY)
            .forEach(verdict -> systems.computeIfAbsent(system(verdict, material), key -> new ArrayList<>()).add(verdict));
        systems.values().removeIf(List::isEmpty);
        return systems;
    }

    private static String system(Verdict verdict, Material material) {
        EObject part = verdict.subject();
        if (part == null || part.eContainer() == null) {
            return missingSystem(verdict, material).orElse("Whole record");
        }
        while (part.eContainer().eContainer() != null) {
            part = part.eContainer();
        }
        return material.labels().label(part.eContainingFeature());
    }

    /** Where a whole system is not entered, the verdict stands on the record and says which system is missing. */
    private static Optional<String> missingSystem(Verdict verdict, Material material) {
        return verdict.missing().stream().findFirst().map(missing -> material.labels().label(missing.feature()));
    }

    private static List<Cell> row(Verdict verdict, Material material) {
        var cells = new ArrayList<Cell>();
        cells.add(new Cell.Stands(verdict.standing()));
        cells.add(Cell.text(verdict.check().id()));
        cells.add(Cell.text(verdict.check().title()));
        cells.add(Cell.text(material.subjectInSystem(verdict)));
        cells.add(Cell.text(Material.sentence(verdict)));
        cells.addAll(Compared.cells(verdict, material.figures()));
        cells.add(Cell.text(verdict.check().gravity().label()));
        cells.add(Cell.text(basis(verdict)));
        return cells;
    }

    /** The citation and how its text reached us. Of the kinds of authority only the law is named: the citations tell the others. */
    private static String basis(Basis basis) {
        return switch (basis.kind()) {
            case COMMON_PRACTICE, REGULATION, DERIVED -> basis.toString();
            case STANDARD, HANDBOOK, TRADE_PRESS -> basis.citation() + " (" + basis.status().label() + ")";
        };
    }

    private static String basis(Verdict verdict) {
        String origin = verdict.limit().filter(limit -> limit.fromMaker()).map(limit -> "Limit used: " + limit.origin() + ". Otherwise: ")
            .orElse("");
        return origin + basis(verdict.check().basis());
    }
}
