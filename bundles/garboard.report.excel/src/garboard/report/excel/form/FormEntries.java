// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel.form;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellReference;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

import garboard.model.CommissioningRecord;
import garboard.model.Item;
import garboard.model.Labels;
import garboard.report.form.FormField;
import garboard.report.form.FormLayout;
import garboard.report.form.FormPart;
import garboard.report.form.FormSheet;

/** What a filled form says, row by row; the items of lists are gathered first and laid into the record at the end. */
final class FormEntries {

    /** One column of a block of items. */
    private static final class Slot {
        final String number;
        final Cell place;
        Optional<String> belongsTo = Optional.empty();
        final Map<FormField, Cell> cells = new LinkedHashMap<>();
        final Map<FormField, Optional<String>> units = new HashMap<>();

        Slot(String number, Cell place) {
            this.number = number;
            this.place = place;
        }

        boolean filled() {
            return cells.values().stream().anyMatch(cell -> CellText.of(cell).isPresent());
        }
    }

    private final CommissioningRecord record;
    private final List<FormMistake> mistakes;
    private final Labels labels;
    private final FieldValues values;
    private final Map<String, FormField> fields = new HashMap<>();
    private final Map<String, FormPart.Items> lists = new LinkedHashMap<>();
    private final Map<String, List<Slot>> slots = new HashMap<>();
    /** The slots of the block of items that is being read, by column. */
    private Map<Integer, Slot> block = Map.of();

    FormEntries(CommissioningRecord record, Labels labels, List<FormMistake> mistakes) {
        this.record = record;
        this.labels = labels;
        this.mistakes = mistakes;
        this.values = new FieldValues(labels);
        for (FormSheet layout : FormLayout.sheets()) {
            for (FormPart part : layout.parts()) {
                switch (part) {
                    case FormPart.Group group -> group.fields().forEach(field -> fields.put(field.key(), field));
                    case FormPart.Items items -> {
                        lists.put(items.key(), items);
                        items.fields().forEach(field -> fields.put(items.key() + " " + field.key(), field));
                    }
                }
            }
        }
    }

    /** A block of items ends with its sheet. */
    void nextSheet() {
        this.block = Map.of();
    }

    void row(Row row, String key) {
        if (key.startsWith(FormGrid.FIELD)) {
            known(row, key.substring(FormGrid.FIELD.length())).ifPresent(field -> single(row, field));
        } else if (key.startsWith(FormGrid.ITEMS_OF)) {
            numbers(row, key.substring(FormGrid.ITEMS_OF.length()));
        } else if (key.startsWith(FormGrid.BELONGS)) {
            block.forEach((column, slot) -> slot.belongsTo = CellText.of(row.getCell(column)).map(String::strip));
        } else if (key.startsWith(FormGrid.ITEM_FIELD)) {
            known(row, key.substring(FormGrid.ITEM_FIELD.length())).ifPresent(field -> block.forEach((column, slot) -> {
                slot.cells.put(field, cell(row, column));
                slot.units.put(field, CellText.of(row.getCell(FormGrid.UNIT)));
            }));
        }
    }

    private static Cell cell(Row row, int column) {
        return row.getCell(column, Row.MissingCellPolicy.CREATE_NULL_AS_BLANK);
    }

    private Optional<FormField> known(Row row, String key) {
        FormField field = fields.get(key);
        if (field == null) {
            mistake(cell(row, FormGrid.KEY), key, "this version of the program does not know the field; make the form with the version that reads it");
        }
        return Optional.ofNullable(field);
    }

    private void single(Row row, FormField field) {
        EObject owner = record;
        Cell cell = cell(row, FormGrid.VALUE);
        boolean filled = CellText.of(cell).isPresent();
        for (EStructuralFeature feature : field.path().subList(0, field.path().size() - 1)) {
            EObject part = (EObject) owner.eGet(feature);
            if (part == null && !filled) {
                return;
            }
            owner = part == null ? create(owner, (EReference) feature) : part;
        }
        enter(owner, field, cell, CellText.of(row.getCell(FormGrid.UNIT)));
    }

    private static EObject create(EObject owner, EReference feature) {
        EObject part = EcoreUtil.create(feature.getEReferenceType());
        owner.eSet(feature, part);
        return part;
    }

    private void enter(EObject owner, FormField field, Cell cell, Optional<String> unit) {
        try {
            values.enter(owner, field.attribute(), CellText.of(cell), unit);
        } catch (EntryException wrong) {
            mistake(cell, labels.labelOfPath(field.path()), wrong.getMessage());
        }
    }

    private void mistake(Cell cell, String field, String problem) {
        String at = new CellReference(cell.getRowIndex(), cell.getColumnIndex()).formatAsString();
        mistakes.add(new FormMistake(cell.getSheet().getSheetName(), at, field, problem));
    }

    private void numbers(Row row, String list) {
        block = new LinkedHashMap<>();
        if (!lists.containsKey(list)) {
            mistake(cell(row, FormGrid.KEY), list, "this version of the program does not know the list; make the form with the version that reads it");
            return;
        }
        for (int column = FormGrid.VALUE; column < FormGrid.HOW; column++) {
            var slot = new Slot(CellText.of(row.getCell(column)).map(String::strip).orElse(""), cell(row, column));
            block.put(column, slot);
            slots.computeIfAbsent(list, key -> new ArrayList<>()).add(slot);
        }
    }

    /** Lays the gathered items into the record: lists above before the lists below them. */
    void takeOver() {
        Map<String, Map<String, EObject>> byNumber = new HashMap<>();
        lists.forEach((key, items) -> byNumber.put(key, takeOver(items, byNumber)));
    }

    private Map<String, EObject> takeOver(FormPart.Items items, Map<String, Map<String, EObject>> above) {
        var byNumber = new HashMap<String, EObject>();
        List<Slot> found = slots.get(items.key());
        if (found == null) {
            return byNumber;
        }
        Map<String, EObject> owners = items.owningList().map(owner -> above.getOrDefault(ownerKey(items), Map.of())).orElse(Map.of());
        var existing = new LinkedHashMap<String, EObject>();
        owners(items, owners).forEach(owner -> list(owner, items).forEach(item -> existing.put(((Item) item).getId(), item)));
        var kept = new ArrayList<EObject>();
        for (Slot slot : found) {
            EObject item = existing.get(slot.number);
            if (item == null && !slot.filled()) {
                continue;
            }
            Optional<EObject> owner = owner(items, slot, owners);
            if (owner.isEmpty()) {
                continue;
            }
            EObject target = item == null ? EcoreUtil.create(items.list().getEReferenceType()) : item;
            if (target.eContainer() != owner.get()) {
                list(owner.get(), items).add(target);
            }
            kept.add(target);
            byNumber.put(slot.number, target);
            slot.cells.forEach((field, cell) -> enterBelow(target, field, cell, slot.units.get(field)));
        }
        // An item whose number was emptied, with nothing left in its column, was taken out by the person.
        existing.values().stream().filter(item -> !kept.contains(item)).forEach(EcoreUtil::remove);
        return byNumber;
    }

    private void enterBelow(EObject item, FormField field, Cell cell, Optional<String> unit) {
        EObject owner = item;
        for (EStructuralFeature feature : field.path().subList(0, field.path().size() - 1)) {
            EObject part = (EObject) owner.eGet(feature);
            if (part == null && CellText.of(cell).isEmpty()) {
                return;
            }
            owner = part == null ? create(owner, (EReference) feature) : part;
        }
        enter(owner, field, cell, unit);
    }

    private Optional<EObject> owner(FormPart.Items items, Slot slot, Map<String, EObject> owners) {
        if (items.owningList().isEmpty()) {
            return owners(items, owners).stream().findFirst().or(() -> Optional.of(reach(items)));
        }
        Optional<EObject> owner = slot.belongsTo.map(owners::get);
        if (owner.isEmpty()) {
            mistake(slot.place, labels.labelOfPath(items.path()), "column \"" + slot.number + "\" says that it belongs to "
                + slot.belongsTo.map(number -> "\"" + number + "\"").orElse("nothing") + "; right would be one of "
                + (owners.isEmpty() ? "the numbers in the list above, which is empty" : String.join(", ", owners.keySet().stream().sorted().toList())));
        }
        return owner;
    }

    /** The objects whose list this is: the items of the list above, or the one part of the record. */
    private List<EObject> owners(FormPart.Items items, Map<String, EObject> owningItems) {
        if (items.owningList().isPresent()) {
            return List.copyOf(owningItems.values());
        }
        EObject owner = record;
        for (EStructuralFeature feature : items.path().subList(0, items.path().size() - 1)) {
            owner = owner == null ? null : (EObject) owner.eGet(feature);
        }
        return owner == null ? List.of() : List.of(owner);
    }

    private EObject reach(FormPart.Items items) {
        EObject owner = record;
        for (EStructuralFeature feature : items.path().subList(0, items.path().size() - 1)) {
            EObject part = (EObject) owner.eGet(feature);
            owner = part == null ? create(owner, (EReference) feature) : part;
        }
        return owner;
    }

    private static String ownerKey(FormPart.Items items) {
        return items.key().substring(0, items.key().lastIndexOf('.'));
    }

    @SuppressWarnings("unchecked") // a containment list of the model holds objects of the model
    private static List<EObject> list(EObject owner, FormPart.Items items) {
        return (List<EObject>) owner.eGet(items.list());
    }
}
