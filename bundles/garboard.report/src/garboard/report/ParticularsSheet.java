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

/** Everything entered about the installation, system by system in the order of a walk. */
final class ParticularsSheet {

    private static final String NAME = "Particulars";
    /** Parts of the record that have sheets of their own. */
    private static final Set<EReference> ELSEWHERE = Set.of(GarboardPackage.Literals.COMMISSIONING_RECORD__INSTRUMENTS,
        GarboardPackage.Literals.COMMISSIONING_RECORD__INSPECTIONS, GarboardPackage.Literals.COMMISSIONING_RECORD__TRIAL,
        GarboardPackage.Literals.COMMISSIONING_RECORD__UPKEEP, GarboardPackage.Literals.COMMISSIONING_RECORD__ACCEPTANCES,
        GarboardPackage.Literals.COMMISSIONING_RECORD__SIGNATURES, GarboardPackage.Literals.COMMISSIONING_RECORD__PHOTOGRAPHS,
        GarboardPackage.Literals.COMMISSIONING_RECORD__REVISIONS);
    /** Lists of parts with no more fields than this are told in one row each. */
    private static final int SMALL = 4;

    private final Material material;
    private final Table.Builder table = Table.of(Table.text("item", "Item", 66), Table.text("given", "As given", 68),
        Table.number("value", "Value", 24), Table.unit("unit", 24)).repeated();

    private ParticularsSheet(Material material) {
        this.material = material;
    }

    static Optional<Sheet> of(Material material) {
        var sheet = new ParticularsSheet(material);
        CommissioningRecord record = material.record();
        for (EReference reference : record.eClass().getEAllContainments()) {
            if (!ELSEWHERE.contains(reference) && record.eIsSet(reference)) {
                sheet.addParts(record, reference, "");
            }
        }
        sheet.addInspections(record);
        if (sheet.table.isEmpty()) {
            return Optional.empty();
        }
        String units = material.options().units() == garboard.quantity.UnitSystem.SI ? "metric units" : "United States customary units";
        return Optional.of(new Sheet(NAME, NAME, Orientation.PORTRAIT, List.of(
            Block.note("As given: number and unit as the person on board gave them. Value and unit: the same in " + units
                + ". Fields that are not entered are not listed, only counted. Places: forward of amidships, to starboard of the "
                + "centreline, up from the loaded waterline."),
            sheet.table.build())));
    }

    private void addParts(EObject owner, EReference reference, String above) {
        String label = material.labels().label(reference);
        String heading = above.isEmpty() ? label : above + " \u203a " + label;
        if (!reference.isMany()) {
            addPart((EObject) owner.eGet(reference), heading);
            return;
        }
        List<?> parts = (List<?>) owner.eGet(reference);
        if (isSmall(reference.getEReferenceType())) {
            table.group(heading);
            parts.forEach(part -> table.row(Cell.text(SmallPart.name((EObject) part, material)),
                Cell.text(SmallPart.words((EObject) part, material)), Cell.BLANK, Cell.BLANK));
            return;
        }
        for (Object part : parts) {
            addPart((EObject) part, heading + " \u203a " + SmallPart.name((EObject) part, material));
        }
    }

    private void addPart(EObject part, String heading) {
        List<EAttribute> fields = fields(part.eClass());
        List<EAttribute> entered = fields.stream().filter(part::eIsSet).toList();
        List<EReference> points = part.eClass().getEAllContainments().stream()
            .filter(reference -> reference.getEReferenceType() == GarboardPackage.Literals.POINT).toList();
        long pointsEntered = points.stream().filter(part::eIsSet).count();
        table.group(heading + "    (" + (entered.size() + pointsEntered) + " of " + (fields.size() + points.size()) + " entered)");
        entered.forEach(field -> addField(part, field));
        points.stream().filter(part::eIsSet).forEach(reference -> table.row(Cell.text(material.labels().label(reference)),
            Cell.text(PointWords.given((garboard.model.Point) part.eGet(reference))), Cell.BLANK, Cell.BLANK));
        for (EReference reference : part.eClass().getEAllContainments()) {
            if (!points.contains(reference) && part.eIsSet(reference)) {
                addParts(part, reference, heading);
            }
        }
    }

    private void addField(EObject part, EAttribute field) {
        FieldValue value = FieldValue.of(part, field, material);
        table.row(Cell.text(material.labels().label(field)), Cell.text(value.given()),
            value.shown().<Cell>map(shown -> new Cell.Number(shown.value(), shown.decimals())).orElse(Cell.BLANK),
            Cell.text(value.shown().map(Figures.Shown::unit).orElse("")));
    }

    private void addInspections(CommissioningRecord record) {
        if (record.getInspections().isEmpty()) {
            return;
        }
        table.group("Inspection answers");
        for (InspectionAnswer answer : record.getInspections()) {
            var words = new ArrayList<String>();
            words.add(answer.eIsSet(GarboardPackage.Literals.INSPECTION_ANSWER__ANSWER) ? material.labels().label(answer.getAnswer())
                : "not answered");
            Material.present(answer.getNote()).ifPresent(words::add);
            Material.present(answer.getAnsweredBy()).ifPresent(words::add);
            Optional.ofNullable(answer.getAnsweredOn()).map(Object::toString).ifPresent(words::add);
            answer.getPhotographs().forEach(photograph -> words.add("photograph " + photograph.getId()));
            table.row(Cell.text(Material.orEmpty(answer.getQuestion())), Cell.text(String.join(", ", words)), Cell.BLANK, Cell.BLANK);
        }
    }

    static List<EAttribute> fields(EClass type) {
        return type.getEAllAttributes().stream().filter(field -> !field.isID()).toList();
    }

    private static boolean isSmall(EClass type) {
        return type.getEAllReferences().isEmpty() && fields(type).size() <= SMALL;
    }
}
