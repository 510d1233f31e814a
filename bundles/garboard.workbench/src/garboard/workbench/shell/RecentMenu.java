// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.shell;

import java.util.List;

import jakarta.inject.Inject;

import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.e4.ui.di.AboutToShow;
import org.eclipse.e4.ui.model.application.ui.menu.MDirectMenuItem;
import org.eclipse.e4.ui.model.application.ui.menu.MMenuElement;
import org.eclipse.e4.ui.model.application.ui.menu.MMenuFactory;

import garboard.session.files.Filing;
import garboard.session.files.RecentRecord;
import garboard.workbench.Desk;

/** The records that were open last, in the menu. */
public final class RecentMenu {

    private static final int WITH_DIGIT = 9;

    @Inject
    private Filing filing;
    @Inject
    private Desk desk;

    /** What such an entry does. */
    private record Opening(Filing filing, RecentRecord recent) {
        @Execute
        void run() {
            filing.open(recent.file());
        }
    }

    @AboutToShow
    void fill(List<MMenuElement> items) {
        int number = 1;
        for (RecentRecord recent : filing.recent().list()) {
            items.add(item(recent, number++));
        }
        if (items.isEmpty()) {
            MDirectMenuItem none = MMenuFactory.INSTANCE.createDirectMenuItem();
            none.setElementId("garboard.menu.recent.none");
            none.setLabel(desk.texts(RecentMenu.class).get("recent.none"));
            none.setEnabled(false);
            items.add(none);
        }
    }

    private MDirectMenuItem item(RecentRecord recent, int number) {
        MDirectMenuItem item = MMenuFactory.INSTANCE.createDirectMenuItem();
        item.setElementId("garboard.menu.recent." + number);
        String name = recent.file().getFileName().toString().replace("&", "&&");
        String vessel = recent.vessel().replace("&", "&&");
        item.setLabel((number <= WITH_DIGIT ? "&" + number + "  " : "    ")
            + (vessel.isEmpty() ? name : desk.texts(RecentMenu.class).get("recent.entry", name, vessel)));
        item.setTooltip(recent.file().toString());
        item.setObject(new Opening(filing, recent));
        return item;
    }
}
