// SPDX-License-Identifier: EPL-2.0
package garboard.codegen;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import org.eclipse.emf.codegen.ecore.generator.Generator;
import org.eclipse.emf.codegen.ecore.generator.GeneratorAdapterFactory;
import org.eclipse.emf.codegen.ecore.genmodel.GenModel;
import org.eclipse.emf.codegen.ecore.genmodel.GenModelPackage;
import org.eclipse.emf.codegen.ecore.genmodel.generator.GenBaseGeneratorAdapter;
import org.eclipse.emf.codegen.ecore.genmodel.generator.GenModelGeneratorAdapterFactory;
import org.eclipse.emf.common.util.BasicMonitor;
import org.eclipse.emf.common.util.Diagnostic;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.plugin.EcorePlugin;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.eclipse.emf.ecore.util.Diagnostician;
import org.eclipse.emf.ecore.xmi.impl.XMIResourceFactoryImpl;

/** Runs EMF's own generator on the Ecore model, with a folder standing in for the IDE's workspace. */
final class ModelGenerator {

    private ModelGenerator() {
    }

    /**
     * Generates model and edit code from the model of {@code source} into the empty folder {@code scratch}.
     *
     * @throws CodegenException when the model does not load, is not valid, or EMF reports an error
     */
    static ModelProjects generate(ModelProjects source, Path scratch) throws IOException, CodegenException {
        var target = new ModelProjects(scratch);
        Files.createDirectories(target.modelFolder());
        Files.createDirectories(scratch.resolve(ModelProjects.EDIT));
        Files.copy(source.ecore(), target.ecore());
        Files.copy(source.genmodel(), target.genmodel());
        standIn(ModelProjects.MODEL, scratch);
        standIn(ModelProjects.EDIT, scratch);
        run(load(target));
        return target;
    }

    private static void standIn(String project, Path scratch) {
        EcorePlugin.getPlatformResourceMap().put(project,
                URI.createFileURI(scratch.resolve(project).toAbsolutePath() + "/"));
    }

    private static GenModel load(ModelProjects projects) throws CodegenException {
        GenModelPackage.eINSTANCE.eClass();
        var resources = new ResourceSetImpl();
        resources.getResourceFactoryRegistry().getExtensionToFactoryMap()
                .put(Resource.Factory.Registry.DEFAULT_EXTENSION, new XMIResourceFactoryImpl());
        resources.getURIConverter().getURIMap().putAll(EcorePlugin.computePlatformURIMap(false));
        var where = URI.createPlatformResourceURI(ModelProjects.MODEL + "/model/" + projects.genmodel().getFileName(), true);
        var genModel = (GenModel) resources.getResource(where, true).getContents().get(0);
        genModel.reconcile();
        for (var genPackage : genModel.getGenPackages()) {
            refuse("The Ecore model is not valid", Diagnostician.INSTANCE.validate(genPackage.getEcorePackage()));
        }
        return genModel;
    }

    private static void run(GenModel genModel) throws CodegenException {
        var broken = genModel.validate();
        if (!broken.isOK()) {
            throw new CodegenException("The genmodel does not fit the Ecore model: " + broken.getMessage());
        }
        genModel.setCanGenerate(true);
        GeneratorAdapterFactory.Descriptor.Registry.INSTANCE.addDescriptor(
                GenModelPackage.eNS_URI, GenModelGeneratorAdapterFactory.DESCRIPTOR);
        var generator = new Generator();
        generator.setInput(genModel);
        for (var project : new Object[] {GenBaseGeneratorAdapter.MODEL_PROJECT_TYPE, GenBaseGeneratorAdapter.EDIT_PROJECT_TYPE}) {
            refuse("EMF's generator reports an error", generator.generate(genModel, project, new BasicMonitor()));
        }
    }

    private static void refuse(String what, Diagnostic found) throws CodegenException {
        if (found.getSeverity() >= Diagnostic.ERROR) {
            throw new CodegenException(what + ": " + lines(found));
        }
    }

    private static String lines(Diagnostic found) {
        return found.getChildren().isEmpty() ? found.getMessage()
                : found.getChildren().stream().map(ModelGenerator::lines).collect(Collectors.joining("; "));
    }
}
