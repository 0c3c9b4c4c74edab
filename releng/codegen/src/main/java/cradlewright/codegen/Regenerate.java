package cradlewright.codegen;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
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
import org.eclipse.emf.ecore.resource.ResourceSet;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.eclipse.emf.ecore.xmi.impl.EcoreResourceFactoryImpl;
import org.eclipse.emf.ecore.xmi.impl.XMIResourceFactoryImpl;

/**
 * Generates the code of {@code cradlewright.model} into a scratch folder; with {@code --write} the folder {@code src-gen}
 * of the bundle is replaced by it. Two runs give the same bytes.
 */
public final class Regenerate {

    private static final String BUNDLE = "cradlewright.model";
    private static final String GENMODEL = "model/cradlewright.genmodel";
    private static final String GENERATED = "src-gen";

    private Regenerate() {
    }

    /**
     * Generates from the command line.
     *
     * @param arguments the bundle's folder, a scratch folder, and {@code --write} to replace the checked-in code
     */
    public static void main(String[] arguments) throws IOException {
        boolean write = arguments.length == 3 && arguments[2].equals("--write");
        if (arguments.length != 2 && !write) {
            throw new IllegalArgumentException("wanted: <folder of the bundle> <scratch folder> [--write]");
        }
        Path bundle = Path.of(arguments[0]);
        Path generated = generate(bundle, Path.of(arguments[1]));
        if (write) {
            replace(bundle.resolve(GENERATED), generated);
        }
    }

    /**
     * Generates the code.
     *
     * @param bundle folder of the bundle, which holds {@code model/cradlewright.genmodel}
     * @param scratch folder to work in; what it holds of an earlier run is deleted first
     * @return the folder with the generated packages
     * @throws IOException when a file cannot be read or written
     * @throws IllegalStateException when the metamodel has errors or the generator reports any
     */
    public static Path generate(Path bundle, Path scratch) throws IOException {
        Path project = scratch.resolve(BUNDLE);
        delete(project);
        copy(bundle.resolve("model"), project.resolve("model"));
        EcorePlugin.getPlatformResourceMap().put(BUNDLE, URI.createFileURI(project.toAbsolutePath() + "/"));
        GenModel genModel = load();
        genModel.reconcile();
        requireOk(genModel.diagnose());
        genModel.setCanGenerate(true);
        GeneratorAdapterFactory.Descriptor.Registry.INSTANCE.addDescriptor(GenModelPackage.eNS_URI,
                GenModelGeneratorAdapterFactory.DESCRIPTOR);
        Generator generator = new Generator();
        generator.setInput(genModel);
        requireOk(generator.generate(genModel, GenBaseGeneratorAdapter.MODEL_PROJECT_TYPE, new BasicMonitor()));
        Path generated = project.resolve(GENERATED);
        useUnixLines(generated);
        return generated;
    }

    private static GenModel load() {
        GenModelPackage.eINSTANCE.eClass();
        ResourceSet resources = new ResourceSetImpl();
        resources.getResourceFactoryRegistry().getExtensionToFactoryMap().put("genmodel", new XMIResourceFactoryImpl());
        resources.getResourceFactoryRegistry().getExtensionToFactoryMap().put("ecore", new EcoreResourceFactoryImpl());
        resources.getURIConverter().getURIMap().putAll(EcorePlugin.computePlatformURIMap(false));
        URI uri = URI.createPlatformResourceURI(BUNDLE + "/" + GENMODEL, true);
        return (GenModel) resources.getResource(uri, true).getContents().get(0);
    }

    private static void requireOk(List<String> complaints) {
        if (!complaints.isEmpty()) {
            throw new IllegalStateException("the metamodel has errors: " + String.join("; ", complaints));
        }
    }

    private static void requireOk(Diagnostic diagnostic) {
        if (diagnostic.getSeverity() >= Diagnostic.ERROR) {
            List<String> messages = new ArrayList<>(List.of(diagnostic.getMessage()));
            diagnostic.getChildren().forEach(child -> messages.add(child.getMessage()));
            throw new IllegalStateException("the generator failed: " + String.join("; ", messages));
        }
    }

    /** Lists the files below a folder as relative paths, sorted. */
    public static List<String> list(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile).map(file -> folder.relativize(file).toString().replace('\\', '/'))
                    .sorted().toList();
        }
    }

    private static void useUnixLines(Path folder) throws IOException {
        for (String name : list(folder)) {
            Path file = folder.resolve(name);
            Files.writeString(file, Files.readString(file).replace("\r\n", "\n"));
        }
    }

    private static void replace(Path old, Path fresh) throws IOException {
        delete(old);
        copy(fresh, old);
    }

    private static void copy(Path from, Path to) throws IOException {
        for (String name : list(from)) {
            Path target = to.resolve(name);
            Files.createDirectories(target.getParent());
            Files.copy(from.resolve(name), target);
        }
    }

    private static void delete(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
