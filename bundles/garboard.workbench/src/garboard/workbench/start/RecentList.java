// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.start;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;

import garboard.session.files.RecentRecord;
import garboard.workbench.Desk;
import garboard.workbench.look.Icons;
import garboard.workbench.look.Lettering;
import garboard.workbench.look.Palette;
import garboard.workbench.text.Texts;

/** The records that were open last; each opens, and each can be taken off the list. */
final class RecentList {

    private final Desk desk;
    private final Texts.Of texts;
    private final StartActions actions;
    private final Palette palette;

    RecentList(Composite parent, Desk desk, StartActions actions) {
        this.desk = desk;
        this.texts = desk.texts(RecentList.class);
        this.actions = actions;
        this.palette = desk.palette();
        List<RecentRecord> recent = actions.recent();
        var block = new Block(parent, texts.get("recent"), palette);
        if (recent.isEmpty()) {
            block.text(texts.get("recent.none")).setForeground(palette.faint());
        }
        int number = 1;
        for (RecentRecord one : recent) {
            row(block, one, number++);
        }
    }

    private void row(Block block, RecentRecord one, int number) {
        var row = new Composite(block, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).spacing(Lettering.width(block, 0.5), 0).applyTo(row);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
        Path file = one.file();
        var open = new Tile(row, "start.recent." + number, Optional.of(Icons.load(row, "record-large", palette)), title(one), about(one), palette)
            .onPress(() -> actions.openRecent(one));
        open.setToolTipText(file.toString());
        if (!one.there()) {
            open.quiet();
        }
        GridDataFactory.fillDefaults().grab(true, false).applyTo(open);
        open.addListener(SWT.KeyDown, event -> {
            if (event.keyCode == SWT.DEL) {
                actions.forget(one);
            }
        });
        var remove = new Tile(row, "start.recent." + number + ".remove", Optional.of(Icons.load(row, "remove", palette)), "", "", palette)
            .named(texts.get("recent.remove", file.getFileName())).onPress(() -> actions.forget(one));
        GridDataFactory.swtDefaults().align(SWT.CENTER, SWT.CENTER).applyTo(remove);
    }

    private String title(RecentRecord one) {
        String vessel = one.vessel().isEmpty() ? texts.get("recent.unnamed") : one.vessel();
        return one.set().isEmpty() ? vessel : texts.get("recent.vesselAndSet", vessel, one.set());
    }

    private String about(RecentRecord one) {
        String where = texts.get("recent.where", one.file().getFileName(), one.file().getParent());
        return Stream.concat(one.there() ? Stream.of(Moments.words(one.when(), desk)) : Stream.of(texts.get("recent.gone")), Stream.of(where))
            .collect(Collectors.joining(" · "));
    }
}
