// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.shell;

import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;

import org.eclipse.core.runtime.RegistryFactory;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.e4.core.contexts.IEclipseContext;
import org.eclipse.e4.core.services.events.IEventBroker;
import org.eclipse.e4.core.services.translation.TranslationService;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.e4.ui.model.application.MApplication;
import org.eclipse.e4.ui.workbench.lifecycle.PostContextCreate;
import org.eclipse.e4.ui.workbench.lifecycle.PostWorkbenchClose;
import org.eclipse.e4.ui.workbench.lifecycle.ProcessAdditions;
import org.eclipse.e4.ui.workbench.modeling.EModelService;
import org.eclipse.osgi.service.datalocation.Location;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.osgi.framework.BundleContext;
import org.osgi.framework.FrameworkUtil;
import org.osgi.service.log.LogReaderService;

import garboard.checks.Catalogue;
import garboard.checks.PracticeExtensions;
import garboard.session.OpenRecord;
import garboard.session.files.Filing;
import garboard.session.files.RecentRecords;
import garboard.session.files.RecordReading;
import garboard.session.journal.Journal;
import garboard.workbench.Desk;
import garboard.workbench.ask.Ask;
import garboard.workbench.ask.DialogAsk;
import garboard.workbench.look.Settings;
import garboard.workbench.look.Theming;
import garboard.workbench.text.Texts;

/** Sets the table before the window comes up, and clears it when the window is gone. */
public final class LifeCycle {

    private static final String NODE = "garboard.workbench";
    /** Under this name the platform finds a dialog of its own for exceptions; without it they are logged, and from there they come to us. */
    private static final String STATUS_REPORTER = "org.eclipse.e4.core.services.statusreporter.StatusReporter";
    /** Under this name the platform looks for the folder that it locks. */
    private static final String INSTANCE_LOCATION = "instanceLocation";

    @PostContextCreate
    void prepare(IEclipseContext context, Display display) {
        // POI would look for a logging library and complain on the console; the log of the platform is ours.
        System.setProperty("log4j2.loggerContextFactory", "org.apache.logging.log4j.simple.SimpleLoggerContextFactory");
        LogBridge.build();
        var settings = new Settings(InstanceScope.INSTANCE.getNode(NODE));
        context.set(TranslationService.LOCALE, settings.language());
        context.set(Settings.class, settings);
        Clock clock = Clock.systemDefaultZone();
        var desk = new Desk(settings, Texts.in(settings.language()), catalogue(), clock);
        context.set(Desk.class, desk);
        ask(context, display, desk);
        files(context, display, desk);
        context.set(Theming.class, new Theming(display, desk));
    }

    private static CompletableFuture<Catalogue> catalogue() {
        return CompletableFuture.supplyAsync(() -> Catalogue.of(PracticeExtensions.practices(RegistryFactory.getRegistry())));
    }

    private static void ask(IEclipseContext context, Display display, Desk desk) {
        context.set(STATUS_REPORTER, null);
        Supplier<Shell> shell = () -> window(display);
        context.set(Ask.class, new DialogAsk(desk, shell));
        var log = new LogFile(desk, () -> asking(context));
        context.set(LogFile.class, log);
        BundleContext bundle = FrameworkUtil.getBundle(LifeCycle.class).getBundleContext();
        String version = ProgramVersion.of(bundle.getBundle());
        context.set(Faults.class, new Faults(display, Optional.ofNullable(bundle.getServiceReference(LogReaderService.class)).map(bundle::getService),
            () -> new FaultDialog(shell.get(), desk, log, version)));
    }

    /** Whoever answers now: a test may have put itself in the person's place. */
    private static Ask asking(IEclipseContext context) {
        return context.getActiveLeaf().get(Ask.class);
    }

    /** The window in front, over which a dialog belongs. */
    private static Shell window(Display display) {
        return Optional.ofNullable(display.getActiveShell()).filter(Shell::isVisible)
            .or(() -> Arrays.stream(display.getShells()).filter(Shell::isVisible).findFirst()).orElse(null);
    }

    private static void files(IEclipseContext context, Display display, Desk desk) {
        Path folder = UserFolder.find();
        var notices = new Notices();
        context.set(Notices.class, notices);
        var recent = RecentRecords.in(folder.resolve("recent.properties"));
        var filing = new Filing(new DeskBench(desk), new AskedFiling(desk, () -> asking(context)), new RecordReading(new SentWorkbooks()), recent,
            desk::catalogue, desk.clock());
        context.set(RecentRecords.class, recent);
        context.set(Filing.class, filing);
        context.set(Leaving.class, new Leaving(filing));
        Path journals = folder.resolve("journal");
        context.set(LeftBehind.class, LeftBehind.in(journals));
        context.set(Journal.class, Journal.begin(journals, (pause, task) -> display.timerExec((int) pause.toMillis(), task), desk.clock(),
            trouble -> display.asyncExec(() -> {
                System.getLogger(Journal.class.getName()).log(System.Logger.Level.WARNING, "The journal cannot be written", trouble);
                notices.say(desk.texts(LifeCycle.class).get("journal.trouble", reason(trouble)));
            })));
    }

    private static String reason(Exception trouble) {
        return trouble instanceof FileSystemException file && file.getReason() != null ? file.getReason() : String.valueOf(trouble.getMessage());
    }

    @ProcessAdditions
    void furnish(IEclipseContext context, MApplication application, EModelService models, Display display, IEventBroker broker, Theming theming,
            Desk desk) {
        if (context.get(INSTANCE_LOCATION) instanceof Location location) {
            context.set(INSTANCE_LOCATION, new SharedLocation(location));
        }
        context.set(Stage.class, new Stage(application, models));
        var memory = new WindowMemory(InstanceScope.INSTANCE.getNode(NODE + ".window"));
        memory.recall(application, models, display);
        context.set(WindowMemory.class, memory);
        desk.onPalette(new ToolIcons(application, models)::turn);
        // Told for the first time when the engine is there and before a window is: nothing is seen in the wrong light.
        broker.subscribe(IThemeEngine.Events.THEME_CHANGED,
            event -> theming.begin((IThemeEngine) event.getProperty(IThemeEngine.Events.THEME_ENGINE)));
    }

    /** A record that nobody was asked about stays in the journal, whatever ended the program. */
    @PostWorkbenchClose
    void clear(Desk desk, Leaving leaving, Journal journal, LeftBehind leftBehind, Theming theming, Faults faults) {
        faults.close();
        theming.close();
        leftBehind.close();
        if (leaving.agreed() || desk.open().filter(OpenRecord::unsaved).isEmpty()) {
            journal.close();
        } else {
            journal.flush();
        }
    }
}
