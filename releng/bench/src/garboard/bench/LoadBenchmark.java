// SPDX-License-Identifier: EPL-2.0
package garboard.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.xmi.XMLResource;
import org.eclipse.emf.ecore.xmi.impl.XMIResourceImpl;
import org.eclipse.emf.ecore.xmi.impl.XMLParserPoolImpl;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;

import garboard.model.GarboardPackage;
import garboard.model.io.RecordFile;
import garboard.model.io.RecordReadException;

/** Reading a record's file, with all that is made sure of on the way, against EMF by itself. */
@State(Scope.Benchmark)
public class LoadBenchmark {

    @Param({})
    private String example;

    private Path file;
    private Map<Object, Object> fastOptions;

    @Setup
    public void write() throws IOException {
        GarboardPackage.eINSTANCE.eClass();
        file = Files.createTempFile("bench", RecordFile.ENDING);
        Files.write(file, ExampleRecord.bytes(example));
        // what EMF's own guide to performance advises
        fastOptions = Map.of(
            XMLResource.OPTION_DEFER_ATTACHMENT, true,
            XMLResource.OPTION_DEFER_IDREF_RESOLUTION, true,
            XMLResource.OPTION_USE_DEPRECATED_METHODS, false,
            XMLResource.OPTION_DISABLE_NOTIFY, true,
            XMLResource.OPTION_USE_PARSER_POOL, new XMLParserPoolImpl(),
            XMLResource.OPTION_USE_XML_NAME_TO_FEATURE_MAP, new HashMap<>());
    }

    @TearDown
    public void delete() throws IOException {
        Files.delete(file);
    }

    @Benchmark
    public EObject open() throws RecordReadException {
        return RecordFile.open(file).record();
    }

    @Benchmark
    public EObject bare() throws IOException {
        return load(Map.of());
    }

    @Benchmark
    public EObject bareFast() throws IOException {
        return load(fastOptions);
    }

    private EObject load(Map<Object, Object> options) throws IOException {
        var resource = new XMIResourceImpl(URI.createFileURI(file.toString()));
        resource.setIntrinsicIDToEObjectMap(new HashMap<>());
        resource.load(options);
        return resource.getContents().getFirst();
    }
}
