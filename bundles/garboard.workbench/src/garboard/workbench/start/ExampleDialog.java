// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.start;

import java.util.Optional;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Shell;

import garboard.examples.Example;
import garboard.examples.Examples;
import garboard.workbench.Desk;
import garboard.workbench.ask.PlainDialog;
import garboard.workbench.look.Icons;
import garboard.workbench.look.Lettering;
import garboard.workbench.text.Texts;

/** Which example to start from. */
final class ExampleDialog extends PlainDialog {

    private final Texts.Of texts;
    private Optional<Example> chosen = Optional.empty();

    ExampleDialog(Shell parent, Desk desk) {
        super(parent, desk, "examples");
        this.texts = desk.texts(ExampleDialog.class);
    }

    /** Shows it. @return the example that was chosen */
    Optional<Example> choose() {
        open();
        return chosen;
    }

    @Override
    protected String title() {
        return texts.get("examples.title");
    }

    @Override
    protected void fill(Composite area) {
        Lettering.heading(text(area, texts.get("examples.lead")), 115);
        text(area, texts.get("examples.made"));
        for (Example example : Examples.all()) {
            var tile = new Tile(area, "examples." + example.name(), Optional.of(Icons.load(area, "example-large", desk().palette())),
                ExampleChoice.title(example, texts), "", desk().palette());
            GridDataFactory.fillDefaults().grab(true, false).applyTo(tile);
            tile.onPress(() -> {
                chosen = Optional.of(example);
                close();
            });
        }
        TabOrder.follow(area);
    }

    @Override
    protected void createButtonsForButtonBar(Composite row) {
        button(row, IDialogConstants.CANCEL_ID, "close", texts.get("back"), false);
    }
}
