// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;

import garboard.model.GarboardPackage.Literals;
import garboard.session.Listeners.Subscription;
import garboard.session.OpenRecord;
import garboard.session.Stop;
import garboard.workbench.Desk;
import garboard.workbench.fields.FieldHelp;
import garboard.workbench.fields.FieldRows;
import garboard.workbench.fields.Section;
import garboard.workbench.fields.SheetScroll;
import garboard.workbench.page.PageTitle;

/**
 * The sections of a page of the trial, below each other. They are made one after the other, so that the page can be used while the rest of it
 * is made, and follow the record while the page is seen.
 */
final class Sections {

    private static final int PAUSE_MILLIS = 15;
    private static final int FIRST = 2;

    private final OpenRecord record;
    private final Desk desk;
    private final Stop stop;
    private final Composite page;
    private final SheetScroll sheet;
    private final List<Entry> entries = new ArrayList<>();
    private final List<Subscription> subscriptions = new ArrayList<>();
    private boolean behind;
    private boolean due;

    /** A section, and what stands in it once it is made. */
    private static final class Entry {
        private final Section section;
        private final List<String> keys;
        private Optional<View> view = Optional.empty();

        Entry(Composite parent, Desk desk, String id, String heading, List<String> keys, Function<Composite, View> maker) {
            this.keys = keys;
            section = new Section(parent, desk, id, heading, body -> {
                body.setLayout(new Stacked(0, 4));
                view = Optional.of(maker.apply(body));
            });
            if (desk.settings().leftOpen(id).orElse(true)) {
                section.openLater();
            }
        }

        boolean has(String key) {
            return keys.stream().anyMatch(own -> key.equals(own) || key.startsWith(own + ".") || key.startsWith(own + "["));
        }
    }

    Sections(Composite parent, OpenRecord record, Desk desk, Stop stop) {
        this.record = record;
        this.desk = desk;
        this.stop = stop;
        page = new Composite(parent, SWT.NONE);
        page.setData("garboard.id", "page:" + stop.name());
        GridLayoutFactory.fillDefaults().spacing(0, 0).applyTo(page);
        sheet = new SheetScroll(page, desk);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(sheet.control());
        PageTitle.make(sheet.content(), desk, stop);
        var help = new FieldHelp(page, record, desk, sheet.content());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(help.control());
        subscriptions.add(record.edits().onChange(change -> follow()));
        subscriptions.add(record.verdicts().onChange(evaluation -> follow()));
        subscriptions.add(desk.settings().onChange(settings -> follow()));
        page.addDisposeListener(event -> close());
    }

    Composite control() {
        return page;
    }

    /** Adds a section. @param keys the places that are in it */
    Sections add(String id, List<String> keys, Function<Composite, View> maker) {
        entries.add(new Entry(sheet.content(), desk, stop.name() + "." + id, desk.texts(Sections.class).get("section." + id), keys, maker));
        return this;
    }

    /** Adds a section with the rows of a group of the form. @param fields names of the fields of the trial in it */
    Sections rows(String group, String... fields) {
        return add(group, List.of(fields).stream().map(field -> Literals.COMMISSIONING_RECORD__TRIAL.getName() + "." + field).toList(), body -> {
            var rows = new FieldRows(body, record, desk);
            Groups.find(desk, group).ifPresent(found -> rows.group(found, record.record()));
            return new View() {
                @Override
                public boolean reveal(String key) {
                    return rows.reveal(key);
                }

                @Override
                public void setFocus() {
                    rows.setFocus();
                }
            };
        });
    }

    /** Makes what is seen first, and the rest little by little. */
    Sections make() {
        entries.stream().filter(entry -> entry.section.isToBeMade()).limit(FIRST).toList().forEach(entry -> entry.section.make());
        page.getDisplay().timerExec(PAUSE_MILLIS, this::makeNext);
        return this;
    }

    private void makeNext() {
        if (!page.isDisposed()) {
            entries.stream().filter(entry -> entry.section.isToBeMade()).findFirst().ifPresent(entry -> {
                entry.section.make();
                page.getDisplay().timerExec(PAUSE_MILLIS, this::makeNext);
            });
        }
    }

    /** One edit tells twice, as a change of the record and of the verdicts; it is shown once, with the next frame. */
    private void follow() {
        if (!page.isVisible()) {
            behind = true;
        } else if (!due) {
            due = true;
            page.getDisplay().asyncExec(() -> {
                due = false;
                if (!page.isDisposed()) {
                    show();
                }
            });
        }
    }

    private void show() {
        entries.forEach(entry -> entry.view.ifPresent(View::show));
    }

    /** Catches up with what happened while another page was shown. */
    void shown() {
        if (behind) {
            behind = false;
            show();
        }
    }

    boolean reveal(String key) {
        Optional<Entry> place = entries.stream().filter(entry -> entry.has(key)).findFirst();
        place.ifPresent(found -> {
            // What stands above it is made before, lest it move away under the eyes.
            entries.stream().limit(entries.indexOf(found)).filter(entry -> entry.section.isToBeMade()).forEach(entry -> entry.section.make());
            found.section.setOpen(true);
            found.section.make();
        });
        return place.flatMap(found -> found.view).filter(view -> view.reveal(key)).isPresent();
    }

    /** Gives the focus to a section. */
    void focus(String key) {
        entries.stream().filter(entry -> entry.has(key)).findFirst().flatMap(entry -> entry.view).ifPresent(View::setFocus);
    }

    void close() {
        subscriptions.forEach(Subscription::close);
        subscriptions.clear();
    }
}
