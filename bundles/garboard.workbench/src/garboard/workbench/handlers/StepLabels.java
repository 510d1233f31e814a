// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.handlers;

import java.util.List;
import java.util.Optional;

import jakarta.annotation.PreDestroy;
import jakarta.inject.Inject;

import org.eclipse.e4.ui.di.UIEventTopic;
import org.eclipse.e4.ui.model.application.MApplication;
import org.eclipse.e4.ui.model.application.ui.menu.MHandledItem;
import org.eclipse.e4.ui.workbench.UIEvents;
import org.eclipse.e4.ui.workbench.modeling.EModelService;

import garboard.session.Listeners.Subscription;
import garboard.session.OpenRecord;
import garboard.workbench.Desk;
import garboard.workbench.text.Texts;

/** Lets the menu and the tools say what would be undone and what would be done again. */
public final class StepLabels {

    private static final int LONGEST = 60;
    private static final int IN_MAIN_MENU_AND_TOOLS = EModelService.ANYWHERE | EModelService.IN_MAIN_MENU | EModelService.IN_TRIM;

    @Inject
    private Desk desk;
    @Inject
    private MApplication application;
    @Inject
    private EModelService models;
    private List<MHandledItem> undo = List.of();
    private List<MHandledItem> redo = List.of();
    private Optional<Subscription> opened = Optional.empty();
    private Optional<Subscription> edited = Optional.empty();

    @Inject
    @org.eclipse.e4.core.di.annotations.Optional
    void started(@UIEventTopic(UIEvents.UILifeCycle.APP_STARTUP_COMPLETE) Object event) {
        undo = items("garboard.menu.undo", "garboard.tool.undo");
        redo = items("garboard.menu.redo", "garboard.tool.redo");
        opened = Optional.of(desk.onOpen(this::follow));
        follow(desk.open());
    }

    private List<MHandledItem> items(String... ids) {
        return List.of(ids).stream().flatMap(id -> models.findElements(application, id, MHandledItem.class, List.of(), IN_MAIN_MENU_AND_TOOLS).stream())
            .toList();
    }

    private void follow(Optional<OpenRecord> record) {
        edited.ifPresent(Subscription::close);
        edited = record.map(one -> one.edits().onChange(change -> show(record)));
        show(record);
    }

    private void show(Optional<OpenRecord> record) {
        Texts.Of texts = desk.texts(StepLabels.class);
        String undone = record.flatMap(one -> one.edits().undoLabel()).map(step -> texts.get("undo.what", escaped(step))).orElse(texts.get("undo"));
        String redone = record.flatMap(one -> one.edits().redoLabel()).map(step -> texts.get("redo.what", escaped(step))).orElse(texts.get("redo"));
        undo.forEach(item -> label(item, undone));
        redo.forEach(item -> label(item, redone));
    }

    private static void label(MHandledItem item, String words) {
        // A tool shows its image; words beside it would move the others at each edit.
        if (item.getElementId().startsWith("garboard.menu.")) {
            if (!words.equals(item.getLabel())) {
                item.setLabel(words);
            }
        } else if (!plain(words).equals(item.getTooltip())) {
            item.setTooltip(plain(words));
        }
    }

    /** Without the sign before the letter that chooses an entry of the menu. */
    private static String plain(String words) {
        return words.replaceFirst("&(?!&)", "").replace("&&", "&");
    }

    private static String escaped(String step) {
        return shortened(step).replace("&", "&&");
    }

    private static String shortened(String step) {
        String line = step.replaceAll("\\s+", " ").strip();
        return line.codePointCount(0, line.length()) <= LONGEST ? line : line.substring(0, line.offsetByCodePoints(0, LONGEST)).strip() + "…";
    }

    @PreDestroy
    void end() {
        opened.ifPresent(Subscription::close);
        edited.ifPresent(Subscription::close);
    }
}
