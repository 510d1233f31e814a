// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.page;

import java.util.Optional;

import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;

import garboard.session.Listeners.Subscription;
import garboard.session.OpenRecord;
import garboard.session.Stop;
import garboard.session.form.FormGroup;
import garboard.session.form.GroupState;
import garboard.workbench.Desk;
import garboard.workbench.fields.FieldRows;
import garboard.workbench.fields.Section;

/** A group of fields on a page: its heading with how much of it is entered, and its rows while it is open. */
final class GroupSection {

    private static final int WORTH_COUNTING = 2;

    private final OpenRecord record;
    private final Desk desk;
    private final FormGroup group;
    private final Section section;
    private final Subscription subscription;
    private Optional<FieldRows> rows = Optional.empty();

    GroupSection(Composite parent, OpenRecord record, Desk desk, Stop stop, FormGroup group) {
        this.record = record;
        this.desk = desk;
        this.group = group;
        String id = stop.name() + "." + group.id();
        section = new Section(parent, desk, id, heading(id), this::fill);
        if (desk.settings().leftOpen(id).orElse(!GroupState.isBetterShut(group, record))) {
            section.openLater();
        }
        section.note(this::note);
        subscription = record.edits().onChange(change -> section.noteAgain());
    }

    private String heading(String id) {
        return group.part().map(part -> desk.labels().label(part)).orElseGet(() -> desk.texts(GroupSection.class)
            .get(group.id().equals(FormGroup.OTHERS) ? "group.others" : "group." + id));
    }

    private String note() {
        GroupState state = GroupState.of(group, record);
        return state.fields() < WORTH_COUNTING ? "" : desk.texts(GroupSection.class).get("group.entered", state.entered(), state.fields());
    }

    private void fill(Composite body) {
        body.setLayout(new FillLayout());
        rows = Optional.of(new FieldRows(body, record, desk).group(group, record.record()));
    }

    /** {@return whether its rows are still to be made} */
    boolean isToBeMade() {
        return section.isToBeMade();
    }

    void make() {
        section.make();
    }

    /** {@return about how many lines it takes} */
    int lines() {
        return section.isOpen() ? group.entries().size() + 1 : 1;
    }

    boolean isOpen() {
        return section.isOpen();
    }

    /** {@return whether a place is in this group, whether it is shown or not} */
    boolean has(String key) {
        return group.entries().stream().flatMap(entry -> entry.paths().stream()).anyMatch(path -> {
            String own = String.join(".", path.stream().map(EStructuralFeature::getName).toList());
            return key.equals(own) || key.startsWith(own + ".") || key.startsWith(own + "[") || own.startsWith(key + ".");
        });
    }

    boolean reveal(String key) {
        section.setOpen(true);
        section.make();
        return rows.filter(made -> made.reveal(key)).isPresent();
    }

    void setFocus() {
        rows.ifPresent(FieldRows::setFocus);
    }

    void close() {
        subscription.close();
        rows.ifPresent(FieldRows::close);
    }
}
