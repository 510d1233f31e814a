// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.trial;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;

import garboard.session.Listeners.Subscription;
import garboard.workbench.Desk;

/** A sentence or some, as wide as there is room; takes no room while there is nothing to say. */
final class Said {

    private final Desk desk;
    private final Label label;
    private Tone tone;

    Said(Composite parent, Desk desk, Tone tone) {
        this.desk = desk;
        this.tone = tone;
        label = new Label(parent, SWT.WRAP);
        label.setVisible(false);
        label.setForeground(tone.in(desk.palette()));
        Subscription palette = desk.onPalette(now -> label.setForeground(this.tone.in(now)));
        label.addDisposeListener(event -> palette.close());
    }

    Label control() {
        return label;
    }

    Said say(String words) {
        return say(words, tone);
    }

    Said say(String words, Tone meant) {
        if (meant != tone) {
            tone = meant;
            label.setForeground(tone.in(desk.palette()));
        }
        if (!label.getText().equals(words)) {
            label.setText(words);
            Room.fit(label, !words.isEmpty());
        }
        return this;
    }
}
