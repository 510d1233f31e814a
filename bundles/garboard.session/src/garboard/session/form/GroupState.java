// SPDX-License-Identifier: EPL-2.0
package garboard.session.form;

import java.util.List;
import java.util.stream.Stream;

import garboard.session.Field;
import garboard.session.OpenRecord;

/**
 * How far a group of the record is filled in.
 *
 * @param fields how many fields it has, lists left out
 * @param entered how many of them are entered, or hold something that could not be read
 * @param items how many items its lists have
 */
public record GroupState(int fields, int entered, int items) {

    /** {@return how a group of the record stands now} */
    public static GroupState of(FormGroup group, OpenRecord open) {
        int items = group.entries().stream().filter(FormEntry.Items.class::isInstance)
            .mapToInt(list -> new ItemList(open.edits(), open.record(), ((FormEntry.Items) list).path()).items().size()).sum();
        List<Field> fields = fields(group, open).toList();
        return new GroupState(fields.size(), (int) fields.stream().filter(field -> isFilled(field, open)).count(), items);
    }

    /**
     * {@return whether a group is better closed at first} Nothing is entered in it, and it is seldom wanted, or no check asks any of it of
     * this installation.
     */
    public static boolean isBetterShut(FormGroup group, OpenRecord open) {
        GroupState state = of(group, open);
        boolean nothing = state.entered == 0 && state.items == 0;
        boolean lists = group.entries().stream().anyMatch(FormEntry.Items.class::isInstance);
        return nothing && (group.shut() || !lists && state.fields > 0 && fields(group, open).allMatch(open.verdicts().byField()::isBeside));
    }

    private static Stream<Field> fields(FormGroup group, OpenRecord open) {
        return group.entries().stream().filter(entry -> !(entry instanceof FormEntry.Items)).flatMap(entry -> entry.paths().stream())
            .map(path -> new Field(open.record(), List.copyOf(path)));
    }

    private static boolean isFilled(Field field, OpenRecord open) {
        return field.value().isPresent() || open.edits().unread(field).isPresent();
    }
}
