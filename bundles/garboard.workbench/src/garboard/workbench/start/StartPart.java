// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.start;

import java.io.IOException;
import java.io.InputStream;
import java.util.Optional;

import jakarta.annotation.PostConstruct;
import jakarta.inject.Inject;

import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;

import garboard.examples.Example;
import garboard.examples.Examples;
import garboard.model.io.RecordFile;
import garboard.model.io.RecordReadException;
import garboard.workbench.Desk;

/** TODO */
public final class StartPart {

    @Inject
    private Desk desk;

    @PostConstruct
    void create(Composite parent) {
        parent.setLayout(new GridLayout());
        for (Example example : Examples.all()) {
            var button = new Button(parent, SWT.PUSH);
            button.setText(example.title());
            button.addListener(SWT.Selection, event -> open(example));
        }
    }

    private void open(Example example) {
        try (InputStream in = example.open()) {
            desk.show(RecordFile.read(in, example.title()), Optional.empty());
        } catch (IOException | RecordReadException broken) {
            throw new IllegalStateException(broken);
        }
    }
}
