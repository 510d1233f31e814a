// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.trial;

import java.util.function.Consumer;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Link;

import garboard.session.Listeners.Subscription;
import garboard.workbench.Desk;

/** A sentence with words in it that lead somewhere: to a field, or to another page. */
final class Leading {

    private final Desk desk;
    private final Link link;

    /** @param pressed told what was pressed, which {@link #to} put there */
    Leading(Composite parent, Desk desk, Consumer<String> pressed) {
        this.desk = desk;
        link = new Link(parent, SWT.NONE);
        link.setVisible(false);
        link.addListener(SWT.Selection, event -> pressed.accept(event.text));
        colour();
        Subscription palette = desk.onPalette(now -> colour());
        link.addDisposeListener(event -> palette.close());
    }

    /** Goes to the place that is pressed. */
    static Leading toPlaces(Composite parent, Desk desk) {
        return new Leading(parent, desk, desk::goTo);
    }

    /** {@return words that lead to a place} */
    static String to(String place, String words) {
        return "<a href=\"" + place + "\">" + plain(words) + "</a>";
    }

    /** {@return words that may hold signs that mean something in a link} */
    static String plain(String words) {
        return words.replace("&", "&&").replace("<", "\u2039").replace(">", "\u203a");
    }

    private void colour() {
        link.setForeground(desk.palette().ink());
        link.setLinkForeground(desk.palette().accent());
    }

    Link control() {
        return link;
    }

    Leading say(String words) {
        if (!link.getText().equals(words)) {
            link.setText(words);
            Room.fit(link, !words.isEmpty());
        }
        return this;
    }
}
