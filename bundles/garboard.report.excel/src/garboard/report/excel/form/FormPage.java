// SPDX-License-Identifier: EPL-2.0
package garboard.report.excel.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

import garboard.model.CommissioningRecord;
import garboard.model.CustomaryUnits;
import garboard.model.FieldText;
import garboard.model.Item;
import garboard.model.Labels;
import garboard.quantity.Kind;
import garboard.quantity.Quantity;
import garboard.report.form.FormField;
import garboard.report.form.FormPart;

/** Lays one sheet of the form out, row after row. */
final class FormPage {

    private static final int HOW_WIDTH = 58;
    private static final int LONGEST_CELL = 32_767;
    /** Letters that surely fit into a line of a value's cell. */
    private static final int VALUE_LETTERS = 15;
    private static final int MOST_LINES = 12;

    private final XSSFSheet sheet;
    private final FormLooks looks;
    private final FormChoices choices;
    private final Labels labels;
    private final CustomaryUnits units;
    private final FieldEntry entry;
    private int next;

    FormPage(XSSFSheet sheet, FormLooks looks, FormChoices choices, Labels labels, CustomaryUnits units) {
        this.sheet = sheet;
        this.looks = looks;
        this.choices = choices;
        this.labels = labels;
        this.units = units;
        this.entry = new FieldEntry(labels);
        sheet.setColumnWidth(FormGrid.LABEL, 36 * 256);
        sheet.setColumnWidth(FormGrid.UNIT, 10 * 256);
        for (int column = FormGrid.VALUE; column < FormGrid.HOW; column++) {
            sheet.setColumnWidth(column, 17 * 256);
        }
        sheet.setColumnWidth(FormGrid.HOW, HOW_WIDTH * 256);
        sheet.setColumnHidden(FormGrid.KEY, true);
    }

    void title(String name) {
        cell(row(26), FormGrid.LABEL, name, looks.title);
        Row heads = row(15);
        cell(heads, FormGrid.LABEL, "What", looks.columnHeading);
        cell(heads, FormGrid.UNIT, "Unit", looks.columnHeading);
        for (int column = FormGrid.VALUE; column < FormGrid.HOW; column++) {
            cell(heads, column, column == FormGrid.VALUE ? "Value" : "", looks.columnHeading);
        }
        cell(heads, FormGrid.HOW, "What to measure, where, with what", looks.columnHeading);
        sheet.createFreezePane(0, next);
        sheet.setRepeatingRows(new CellRangeAddress(0, next - 1, -1, -1));
    }

    void part(FormPart part, CommissioningRecord record) {
        switch (part) {
            case FormPart.Group group -> group(group, record);
            case FormPart.Items items -> items(items, record);
        }
    }

    void finish() {
        FormWriter.quiet(sheet, next);
    }

    private void group(FormPart.Group group, CommissioningRecord record) {
        heading(group.path().isEmpty() ? labels.label(record.eClass()) : labels.labelOfPath(group.path()));
        for (FormField field : group.fields()) {
            Optional<Object> value = value(record, field.path());
            List<EStructuralFeature> below = field.path().subList(group.path().size(), field.path().size());
            Row row = fieldRow(labels.labelOfPath(below), field.attribute(), value, true);
            input(row, FormGrid.VALUE, field.attribute(), value, unit(field.attribute(), value));
            cell(row, FormGrid.KEY, FormGrid.FIELD + field.key(), null);
        }
    }

    private void items(FormPart.Items items, CommissioningRecord record) {
        heading(labels.labelOfPath(items.path()));
        List<Item> present = present(items, record);
        int slots = Math.max(FormGrid.ITEMS, (present.size() + items.blanks() + FormGrid.ITEMS - 1) / FormGrid.ITEMS * FormGrid.ITEMS);
        for (int from = 0; from < slots; from += FormGrid.ITEMS) {
            block(items, present, from);
        }
    }

    private void block(FormPart.Items items, List<Item> present, int from) {
        Row numbers = row(16);
        cell(numbers, FormGrid.LABEL, from == 0 ? "Number" : "Number (more)", looks.label);
        cell(numbers, FormGrid.KEY, FormGrid.ITEMS_OF + items.key(), null);
        var shown = new ArrayList<Optional<Item>>();
        for (int slot = 0; slot < FormGrid.ITEMS; slot++) {
            Optional<Item> item = from + slot < present.size() ? Optional.of(present.get(from + slot)) : Optional.empty();
            shown.add(item);
            cell(numbers, FormGrid.VALUE + slot, item.map(Item::getId).orElse("new " + (from + slot - present.size() + 1)), looks.number);
        }
        items.owningList().ifPresent(owner -> belongs(items, owner, shown));
        for (FormField field : items.fields()) {
            List<Optional<Object>> values = shown.stream().map(item -> item.flatMap(i -> value(i, field.path()))).toList();
            Optional<Object> first = values.stream().flatMap(Optional::stream).findFirst();
            Row row = fieldRow(labels.labelOfPath(field.path()), field.attribute(), first, false);
            Optional<String> unit = unit(field.attribute(), first);
            int lines = values.stream().flatMap(Optional::stream).mapToInt(value -> lines(text(field.attribute(), value, unit.orElse("")))).max().orElse(1);
            row.setHeightInPoints(Math.max(row.getHeightInPoints(), height(lines)));
            for (int slot = 0; slot < FormGrid.ITEMS; slot++) {
                input(row, FormGrid.VALUE + slot, field.attribute(), values.get(slot), unit);
            }
            cell(row, FormGrid.KEY, FormGrid.ITEM_FIELD + items.key() + " " + field.key(), null);
        }
        row(8);
    }

    private void belongs(FormPart.Items items, EStructuralFeature owner, List<Optional<Item>> shown) {
        Row row = row(16);
        cell(row, FormGrid.LABEL, "Belongs to (number in \"" + labels.label(owner) + "\")", looks.label);
        cell(row, FormGrid.KEY, FormGrid.BELONGS + items.key(), null);
        for (int slot = 0; slot < FormGrid.ITEMS; slot++) {
            String above = shown.get(slot).map(item -> ((Item) item.eContainer()).getId()).orElse("");
            cell(row, FormGrid.VALUE + slot, above, looks.input);
        }
    }

    private static List<Item> present(FormPart.Items items, CommissioningRecord record) {
        List<EObject> owners = List.of(record);
        for (EStructuralFeature feature : items.path()) {
            var below = new ArrayList<EObject>();
            for (EObject owner : owners) {
                Object value = owner.eGet(feature);
                if (value instanceof List<?> list) {
                    list.forEach(element -> below.add((EObject) element));
                } else if (value != null) {
                    below.add((EObject) value);
                }
            }
            owners = below;
        }
        return owners.stream().map(Item.class::cast).toList();
    }

    private void heading(String words) {
        row(6);
        Row row = row(20);
        for (int column = FormGrid.LABEL; column <= FormGrid.HOW; column++) {
            cell(row, column, column == FormGrid.LABEL ? words : "", looks.heading);
        }
    }

    private Row fieldRow(String label, EAttribute attribute, Optional<Object> value, boolean single) {
        String how = labels.how(attribute).orElse("");
        int wide = single ? HOW_WIDTH + 17 * (FormGrid.ITEMS - 1) : HOW_WIDTH;
        int lines = Math.max(Math.max(1, (how.length() + wide - 1) / wide), (label.length() + 33) / 34);
        int written = single && attribute.getEAttributeType().getInstanceClass() == String.class ? value.map(text -> lines(text.toString())).orElse(1) : 1;
        Row row = row(height(Math.max(lines, written)));
        cell(row, FormGrid.LABEL, label, looks.label);
        unitCell(row, attribute, value);
        int howColumn = single ? FormGrid.VALUE + 1 : FormGrid.HOW;
        cell(row, howColumn, how, looks.how);
        if (single) {
            sheet.addMergedRegionUnsafe(new CellRangeAddress(row.getRowNum(), row.getRowNum(), howColumn, FormGrid.HOW));
        }
        return row;
    }

    private static int height(int lines) {
        return 4 + 13 * Math.min(MOST_LINES, lines);
    }

    private static int lines(String text) {
        return (int) text.lines().mapToLong(line -> 1 + line.length() / VALUE_LETTERS).sum();
    }

    private void unitCell(Row row, EAttribute attribute, Optional<Object> value) {
        Optional<Kind<?>> kind = Kind.ofType(attribute.getEAttributeType().getInstanceClass());
        cell(row, FormGrid.UNIT, unit(attribute, value).orElse(""), kind.isPresent() ? looks.unit : looks.label);
        kind.ifPresent(k -> choices.offer(sheet, "unit_" + k.name().replace(' ', '_'), k.units(), row.getRowNum(), FormGrid.UNIT, FormGrid.UNIT));
        if (attribute.getEAttributeType() instanceof EEnum type) {
            List<String> words = type.getELiterals().stream().filter(literal -> literal.getValue() != 0)
                .map(literal -> entry.word(literal)).toList();
            choices.offer(sheet, type.getName(), words, row.getRowNum(), FormGrid.VALUE, FormGrid.HOW - 1);
        }
    }

    /** The unit that a row is in: that of its first value, else the customary one. */
    private Optional<String> unit(EAttribute attribute, Optional<Object> value) {
        return value.filter(Quantity.class::isInstance).map(quantity -> ((Quantity<?>) quantity).givenUnit())
            .or(() -> Kind.ofType(attribute.getEAttributeType().getInstanceClass()).map(kind -> units.unit(attribute)));
    }

    private void input(Row row, int column, EAttribute attribute, Optional<Object> value, Optional<String> unit) {
        String text = value.map(given -> text(attribute, given, unit.orElse(""))).orElse("");
        // A longer text stays in the record that travels with the form; the reader leaves the field alone.
        cell(row, column, text.length() > LONGEST_CELL ? FormReader.TOO_LONG : text, looks.input);
    }

    private String text(EAttribute attribute, Object value, String unit) {
        if (value instanceof Quantity<?> quantity) {
            // A ratio may have been given without a unit; in a row with another unit it needs one.
            String number = quantity.givenUnit().equals(unit) ? quantity.givenNumber() : quantity.givenNumber() + " " + quantity.givenUnit();
            return number + quantity.accuracy().map(accuracy -> " " + accuracy).orElse("");
        }
        if (value instanceof Enumerator choice) {
            return entry.word(choice);
        }
        if (value instanceof List<?> list) {
            return String.join("\n", list.stream().map(Object::toString).toList());
        }
        return FieldText.text(attribute.getEAttributeType(), value);
    }

    private static Optional<Object> value(EObject start, List<EStructuralFeature> path) {
        EObject owner = start;
        for (EStructuralFeature feature : path.subList(0, path.size() - 1)) {
            owner = (EObject) owner.eGet(feature);
            if (owner == null) {
                return Optional.empty();
            }
        }
        return owner.eIsSet(path.getLast()) ? Optional.of(owner.eGet(path.getLast())) : Optional.empty();
    }

    private Row row(int points) {
        Row row = sheet.createRow(next++);
        row.setHeightInPoints(points);
        return row;
    }

    private static void cell(Row row, int column, String text, CellStyle style) {
        Cell cell = row.createCell(column);
        if (!text.isEmpty()) {
            cell.setCellValue(CellText.escaped(text));
        }
        if (style != null) {
            cell.setCellStyle(style);
        }
    }
}
