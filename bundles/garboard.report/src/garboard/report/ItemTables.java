// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

import garboard.model.GarboardPackage;
import garboard.model.Point;
import garboard.quantity.Quantity;

/**
 * A list of like parts as tables: a row for each part where few fields are entered, otherwise a column for each part, several side by
 * side to be compared.
 */
final class ItemTables {

    private static final int MOST_FIELDS_ACROSS = 5;
    private static final int MOST_PARTS_ACROSS = 3;
    private static final double LABEL_MM = 47;
    private static final double PART_MM = 45;

    private final Material material;

    private ItemTables(Material material) {
        this.material = material;
    }

    static List<Block> of(List<?> list, Material material) {
        var tables = new ItemTables(material);
        List<EObject> parts = list.stream().map(EObject.class::cast).toList();
        List<EStructuralFeature> entered = parts.getFirst().eClass().getEAllStructuralFeatures().stream()
            .filter(feature -> feature != GarboardPackage.Literals.ITEM__ID && parts.stream().anyMatch(part -> part.eIsSet(feature))).toList();
        if (entered.isEmpty()) {
            return List.of(Block.note(Outcome.count(parts.size(), "entry").replace("entrys", "entries") + " with nothing entered."));
        }
        return entered.size() <= MOST_FIELDS_ACROSS ? List.of(tables.rows(parts, entered)) : tables.bands(parts, entered);
    }

    private Table rows(List<EObject> parts, List<EStructuralFeature> fields) {
        double width = Table.PORTRAIT_MM / fields.size();
        var table = Table.of(fields.stream().map(field -> Table.text(field.getName(), material.labels().label(field), width))
            .toArray(Table.Column[]::new));
        parts.forEach(part -> table.row(fields.stream().map(field -> Cell.text(value(part, field))).toList()));
        return table.build();
    }

    private List<Block> bands(List<EObject> parts, List<EStructuralFeature> fields) {
        var bands = new ArrayList<Block>();
        for (int from = 0; from < parts.size(); from += MOST_PARTS_ACROSS) {
            bands.add(band(parts.subList(from, Math.min(from + MOST_PARTS_ACROSS, parts.size())), fields));
        }
        return bands;
    }

    private Table band(List<EObject> parts, List<EStructuralFeature> fields) {
        var columns = new ArrayList<Table.Column>();
        columns.add(Table.text("field", "Item", LABEL_MM));
        for (int index = 0; index < parts.size(); index++) {
            columns.add(Table.text("part" + index, SmallPart.name(parts.get(index), material), PART_MM));
        }
        var table = Table.of(columns.toArray(Table.Column[]::new));
        for (EStructuralFeature field : fields) {
            boolean isName = field.getName().equals("name"); // stands in the heading
            if (!isName && parts.stream().anyMatch(part -> part.eIsSet(field))) {
                var cells = new ArrayList<Cell>();
                cells.add(Cell.text(material.labels().label(field)));
                parts.forEach(part -> cells.add(Cell.text(value(part, field))));
                table.row(cells);
            }
        }
        return table.build();
    }

    /** As it was given, and the same in the units of the report where those are others. */
    private String value(EObject part, EStructuralFeature field) {
        if (!part.eIsSet(field)) {
            return "";
        }
        if (field instanceof EAttribute attribute) {
            return withReportUnits(part, attribute);
        }
        EReference reference = (EReference) field;
        if (!reference.isMany()) {
            return part.eGet(reference) instanceof Point point ? PointWords.given(point) : SmallPart.words((EObject) part.eGet(reference), material);
        }
        return ((List<?>) part.eGet(reference)).stream().map(element -> SmallPart.words((EObject) element, material)).collect(Collectors.joining("\n"));
    }

    private String withReportUnits(EObject part, EAttribute field) {
        FieldValue value = FieldValue.of(part, field, material);
        return part.eGet(field) instanceof Quantity<?> quantity ? material.inBoth(quantity, field) : value.given();
    }
}
