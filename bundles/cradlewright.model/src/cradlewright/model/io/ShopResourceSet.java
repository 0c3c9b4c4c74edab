package cradlewright.model.io;

import cradlewright.model.base.BasePackage;
import cradlewright.model.fixture.FixturePackage;
import cradlewright.model.floor.FloorPackage;
import cradlewright.model.job.JobPackage;
import cradlewright.model.stock.StockPackage;
import cradlewright.model.vehicle.VehiclePackage;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.List;
import java.util.Map;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EPackage;
import org.eclipse.emf.ecore.impl.EPackageRegistryImpl;
import org.eclipse.emf.ecore.resource.impl.ResourceSetImpl;
import org.eclipse.emf.ecore.resource.impl.URIHandlerImpl;

/** The files of one shop. References are found by id in the index; nothing is ever loaded because a reference names it. */
final class ShopResourceSet extends ResourceSetImpl {

    private final ShopIndex index;

    ShopResourceSet(ShopIndex index) {
        this.index = index;
        EPackageRegistryImpl packages = new EPackageRegistryImpl();
        for (EPackage nouns : List.of(BasePackage.eINSTANCE, StockPackage.eINSTANCE, VehiclePackage.eINSTANCE,
                FixturePackage.eINSTANCE, FloorPackage.eINSTANCE, JobPackage.eINSTANCE)) {
            packages.put(nouns.getNsURI(), nouns);
        }
        setPackageRegistry(packages);
        getURIConverter().getURIHandlers().clear();
        getURIConverter().getURIHandlers().add(new ClosedGate());
    }

    @Override
    public EObject getEObject(URI uri, boolean loadOnDemand) {
        return ShopResource.SCHEME.equals(uri.scheme()) && uri.hasFragment() ? index.find(uri.fragment()).orElse(null) : null;
    }

    /** Opens nothing, whatever the address. */
    private static final class ClosedGate extends URIHandlerImpl {

        @Override
        public InputStream createInputStream(URI uri, Map<?, ?> options) throws IOException {
            throw new IOException("only the reader opens files of a shop, refused: " + uri);
        }

        @Override
        public OutputStream createOutputStream(URI uri, Map<?, ?> options) throws IOException {
            throw new IOException("only the writer saves files of a shop, refused: " + uri);
        }
    }
}
