// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;

import garboard.model.CommissioningRecord;
import garboard.model.GarboardPackage;
import garboard.model.InspectionAnswer;
import garboard.model.Point;
import garboard.quantity.UnitSystem;

/** Everything entered about the installation, system by system in the order of a walk. */
final class ParticularsSheet {

    private static final String NAME = "Particulars";
    /** Parts of the record that have sheets of their own. */
    private static final Set<EReference> ELSEWHERE = Set.of(GarboardPackage.Literals.COMMISSIONING_RECORD__INSTRUMENTS,
        GarboardPackage.Literals.COMMISSIONING_RECORD__INSPECTIONS, GarboardPackage.Literals.COMMISSIONING_RECORD__TRIAL,
        GarboardPackage.Literals.COMMISSIONING_RECORD__UPKEEP, GarboardPackage.Literals.COMMISSIONING_RECORD__ACCEPTANCES,
        GarboardPackage.Literals.COMMISSIONING_RECORD__SIGNATURES, GarboardPackage.Literals.COMMISSIONING_RECORD__PHOTOGRAPHS,
        GarboardPackage.Literals.COMMISSIONING_RECORD__REVISIONS);

    private final Material material;
    private final List<Block> blocks = new ArrayList<>();
    /** Lists of the system at hand, told in tables of their own behind its fields. */
    private final List<Block> lists = new ArrayList<>();

    private ParticularsSheet(Material material) {
        this.material = material;
    }

    static Optional<Sheet> of(Material material) {
        var sheet = new ParticularsSheet(material);
        CommissioningRecord record = material.record();
        for (EReference reference : record.eClass().getEAllContainments()) {
            if (!ELSEWHERE.contains(reference) && record.eIsSet(reference)) {
                sheet.addSystem(record, reference);
            }
        }
        sheet.addInspections(record);
        if (sheet.blocks.isEmpty()) {
            return Optional.empty();
        }
        String units = material.options().units() == UnitSystem.SI ? "metric units" : "United States customary units";
        sheet.blocks.addFirst(Block.note("As given: number and unit as the person on board gave them. Value and unit, or in brackets: the same in "
            + units + ". Fields that are not entered are not listed, only counted. Places: forward of amidships, to starboard of the "
            + "centreline, up from the loaded waterline."));
        return Optional.of(new Sheet(NAME, NAME, Orientation.PORTRAIT, sheet.blocks));
    }

    private void addSystem(CommissioningRecord record, EReference reference) {
        String label = material.labels().label(reference);
        if (reference.isMany()) {
            blocks.add(new Block.Heading(label));
            blocks.addAll(ItemTables.of((List<?>) record.eGet(reference), material));
            return;
        }
        EObject system = (EObject) record.eGet(reference);
        blocks.add(new Block.Heading(label + "  " + counted(system)));
        var table = Table.of(Table.text("item", "Item", 66), Table.text("given", "As given", 68), Table.number("value", "Value", 24),
            Table.unit("unit", 24));
        lists.clear();
        addFields(table, system);
        addParts(table, system, "");
        if (!table.isEmpty()) {
            blocks.add(table.build());
        }
        blocks.addAll(lists);
    }

    private void addParts(Table.Builder table, EObject owner, String above) {
        for (EReference reference : owner.eClass().getEAllContainments()) {
            if (isPoint(reference) || !owner.eIsSet(reference)) {
                continue;
            }
            String heading = above + material.labels().label(reference);
            if (reference.isMany()) {
                lists.add(new Block.Heading(heading));
                lists.addAll(ItemTables.of((List<?>) owner.eGet(reference), material));
            } else {
                EObject part = (EObject) owner.eGet(reference);
                table.group(heading + "  " + counted(part));
                addFields(table, part);
                addParts(table, part, heading + " \u203a ");
            }
        }
    }

    private void addFields(Table.Builder table, EObject part) {
        for (EAttribute field : fields(part.eClass())) {
            if (part.eIsSet(field)) {
                FieldValue value = FieldValue.of(part, field, material);
                table.row(Cell.text(material.labels().label(field)), Cell.text(value.given()),
                    value.shown().<Cell>map(shown -> new Cell.Number(shown.value(), shown.decimals())).orElse(Cell.BLANK),
                    Cell.text(value.shown().map(Figures.Shown::unit).orElse("")));
            }
        }
        for (EReference reference : part.eClass().getEAllContainments()) {
            if (isPoint(reference) && part.eIsSet(reference)) {
                table.row(Cell.text(material.labels().label(reference)), Cell.text(PointWords.given((Point) part.eGet(reference))), Cell.BLANK,
                    Cell.BLANK);
            }
        }
    }

    /** How many of the fields of a part itself are entered. */
    private static String counted(EObject part) {
        List<EReference> points = part.eClass().getEAllContainments().stream().filter(ParticularsSheet::isPoint).toList();
        List<EAttribute> fields = fields(part.eClass());
        long entered = fields.stream().filter(part::eIsSet).count() + points.stream().filter(part::eIsSet).count();
        return "(" + entered + " of " + (fields.size() + points.size()) + " entered)";
    }

    private void addInspections(CommissioningRecord record) {
        if (record.getInspections().isEmpty()) {
            return;
        }
        blocks.add(new Block.Heading("Inspection answers"));
        var table = Table.of(Table.text("question", "Question", 82), Table.text("answer", "Answer", 20), Table.text("note", "Note", 50),
            Table.text("by", "By, on", 30));
        for (InspectionAnswer answer : record.getInspections()) {
            var note = new ArrayList<String>();
            Material.present(answer.getNote()).ifPresent(note::add);
            answer.getPhotographs().forEach(photograph -> note.add("photograph " + photograph.getId()));
            boolean answered = answer.eIsSet(GarboardPackage.Literals.INSPECTION_ANSWER__ANSWER);
            table.row(Cell.text(Material.orEmpty(answer.getQuestion())), Cell.text(answered ? material.labels().label(answer.getAnswer()) : "open"),
                Cell.text(String.join("; ", note)),
                Cell.text((Material.orEmpty(answer.getAnsweredBy()) + " " + Material.orEmpty(answer.getAnsweredOn())).strip()));
        }
        blocks.add(table.build());
    }

    static List<EAttribute> fields(EClass type) {
        return type.getEAllAttributes().stream().filter(field -> !field.isID()).toList();
    }

    private static boolean isPoint(EReference reference) {
        return reference.getEReferenceType() == GarboardPackage.Literals.POINT;
    }
}
