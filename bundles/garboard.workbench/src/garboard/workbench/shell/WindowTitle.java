// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.shell;

import java.util.Optional;

import org.eclipse.e4.ui.model.application.ui.basic.MWindow;
import org.eclipse.swt.widgets.Shell;

import garboard.session.OpenRecord;
import garboard.session.files.RecordName;
import garboard.workbench.Desk;
import garboard.workbench.text.Texts;

/** The title of the window: which record, and whether it is saved. */
final class WindowTitle {

    private final MWindow window;
    private final Shell shell;
    private final Texts.Of texts;
    private String shown = "";

    WindowTitle(MWindow window, Shell shell, Desk desk) {
        this.window = window;
        this.shell = shell;
        this.texts = desk.texts(WindowTitle.class);
    }

    /** Brings it up to date; cheap when nothing changed. */
    void show(Optional<OpenRecord> open) {
        boolean unsaved = open.map(OpenRecord::unsaved).orElse(false);
        String title = open.map(record -> RecordName.of(record).orElse(texts.get("record.new")))
            .map(name -> texts.get(unsaved ? "title.unsaved" : "title.saved", name)).orElse(texts.get("title.none"));
        if (!title.equals(shown)) {
            shown = title;
            window.setLabel(title);
            shell.setModified(unsaved);
        }
    }
}
