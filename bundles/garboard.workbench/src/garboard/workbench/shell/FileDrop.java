// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.shell;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

import org.eclipse.swt.dnd.DND;
import org.eclipse.swt.dnd.DropTarget;
import org.eclipse.swt.dnd.DropTargetAdapter;
import org.eclipse.swt.dnd.DropTargetEvent;
import org.eclipse.swt.dnd.FileTransfer;
import org.eclipse.swt.widgets.Shell;

import garboard.model.io.RecordFile;
import garboard.session.files.Filing;

/** Opens a record or workbook that is dropped on the window. Other files are left to the parts that take them, as photographs. */
final class FileDrop extends DropTargetAdapter {

    private final Shell shell;
    private final Filing filing;
    private final Runnable refused;

    private FileDrop(Shell shell, Filing filing, Runnable refused) {
        this.shell = shell;
        this.filing = filing;
        this.refused = refused;
    }

    /** @param refused is told when none of the files can be opened */
    static void on(Shell shell, Filing filing, Runnable refused) {
        var target = new DropTarget(shell, DND.DROP_COPY | DND.DROP_LINK | DND.DROP_DEFAULT);
        target.setTransfer(FileTransfer.getInstance());
        target.addDropListener(new FileDrop(shell, filing, refused));
    }

    /** {@return the first of the files that can be opened} */
    static Optional<Path> opened(String... files) {
        return Arrays.stream(files).filter(FileDrop::canBeOpened).map(Path::of).findFirst();
    }

    /** {@return whether a name looks like that of a record or workbook} */
    static boolean canBeOpened(String file) {
        String name = file.toLowerCase(Locale.ROOT);
        return name.endsWith(RecordFile.ENDING) || name.endsWith(".xlsx");
    }

    @Override
    public void dragEnter(DropTargetEvent event) {
        if (event.detail == DND.DROP_DEFAULT) {
            event.detail = DND.DROP_COPY;
        }
    }

    @Override
    public void drop(DropTargetEvent event) {
        if (event.data instanceof String[] files) {
            // Later: a question must not keep the other program waiting in the middle of a drag.
            opened(files).ifPresentOrElse(file -> shell.getDisplay().asyncExec(() -> filing.open(file)), refused);
        }
    }
}
