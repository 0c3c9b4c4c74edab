package cradlewright.model.io;

import java.io.IOException;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.xmi.XMLHelper;
import org.eclipse.emf.ecore.xmi.XMLLoad;
import org.eclipse.emf.ecore.xmi.impl.SAXXMLHandler;
import org.eclipse.emf.ecore.xmi.impl.URIHandlerImpl;
import org.eclipse.emf.ecore.xmi.impl.XMLLoadImpl;
import org.eclipse.emf.ecore.xmi.impl.XMLResourceImpl;
import org.xml.sax.InputSource;
import org.xml.sax.helpers.DefaultHandler;

/**
 * One file of a shop as an EMF resource. It is filled from elements that have passed {@link SafeXml}, never from a stream,
 * and remembers which element each object came from.
 */
final class ShopResource extends XMLResourceImpl {

    /** Scheme of all references across files: {@code shop:/#id}. */
    static final String SCHEME = "shop";

    /** So small that each attribute gets a line of its own. */
    private static final int BREAK_ALWAYS = 1;

    private final ShopIndex index;
    private final Map<EObject, XmlElement> places = new IdentityHashMap<>();
    private XmlElement tree;

    ShopResource(String path, ShopIndex index) {
        super(URI.createURI(SCHEME + ":/" + path));
        this.index = index;
        setEncoding("UTF-8");
        setIntrinsicIDToEObjectMap(new HashMap<>());
    }

    /** Makes objects of the elements; what does not fit is found in {@link #getErrors()} afterwards. */
    void load(XmlElement root) {
        tree = root;
        Map<Object, Object> options = new HashMap<>();
        options.put(OPTION_DEFER_IDREF_RESOLUTION, Boolean.TRUE);
        options.put(OPTION_URI_HANDLER, new KeepUris());
        try {
            load(new InputSource(), options);
        } catch (IOException e) {
            // The loader throws the first of the errors that it has also put into the list.
            if (getErrors().isEmpty()) {
                throw new IllegalStateException("elements in memory could not be read", e);
            }
        }
    }

    /** Returns the options that make the one text of a file: one attribute a line, Unix line ends. */
    static Map<Object, Object> saveOptions() {
        Map<Object, Object> options = new HashMap<>();
        options.put(OPTION_LINE_WIDTH, BREAK_ALWAYS);
        options.put(Resource.OPTION_LINE_DELIMITER, "\n");
        options.put(OPTION_URI_HANDLER, new ShortUris());
        return options;
    }

    /** Returns the element that the object, or else the nearest one around it, was read from; null for new objects. */
    XmlElement placeOf(EObject object) {
        EObject at = object;
        while (at != null && !places.containsKey(at)) {
            at = at.eContainer();
        }
        return places.get(at);
    }

    /** Takes over the lines of a text that was just written from the contents. */
    void rememberPlaces(XmlElement written) {
        places.clear();
        tree = written;
        remember(getContents().get(0), written);
    }

    private void remember(EObject object, XmlElement element) {
        places.put(object, element);
        Map<String, Integer> seen = new HashMap<>();
        Map<String, XmlElement> children = new HashMap<>();
        for (XmlElement child : element.children()) {
            int number = seen.merge(child.name(), 1, Integer::sum);
            children.put(child.name() + " " + number, child);
        }
        Map<String, Integer> used = new HashMap<>();
        for (EObject inner : object.eContents()) {
            String feature = inner.eContainingFeature().getName();
            XmlElement child = children.get(feature + " " + used.merge(feature, 1, Integer::sum));
            if (child != null) {
                remember(inner, child);
            }
        }
    }

    /** Returns the element at the top as it was last read or written; null when nothing was. */
    XmlElement tree() {
        return tree;
    }

    @Override
    protected XMLLoad createXMLLoad() {
        return new TreeLoad(createXMLHelper());
    }

    @Override
    protected XMLLoad createXMLLoad(Map<?, ?> options) {
        return createXMLLoad();
    }

    /** Looks into the map only: the inherited search walks all objects for each id that is not there. */
    @Override
    protected EObject getEObjectByID(String id) {
        return getIntrinsicIDToEObjectMap().get(id);
    }

    @Override
    protected void attachedHelper(EObject object) {
        super.attachedHelper(object);
        index.attached(object);
    }

    @Override
    protected void detachedHelper(EObject object) {
        super.detachedHelper(object);
        index.detached(object);
    }

    private final class TreeLoad extends XMLLoadImpl {

        private final TreeParser parser = new TreeParser(tree);

        TreeLoad(XMLHelper helper) {
            super(helper);
        }

        @Override
        protected TreeParser makeParser() {
            return parser;
        }

        @Override
        protected DefaultHandler makeDefaultHandler() {
            return new SAXXMLHandler(resource, helper, options) {
                @Override
                protected void handleObjectAttribs(EObject object) {
                    places.put(object, parser.current());
                    super.handleObjectAttribs(object);
                }
            };
        }
    }

    /** Leaves references as they are written; they are judged once all files are read. */
    private static final class KeepUris extends URIHandlerImpl {

        @Override
        public URI resolve(URI uri) {
            return uri;
        }
    }

    /** Writes references without the file in which their object lies, so that they survive its renaming. */
    private static final class ShortUris extends URIHandlerImpl {

        @Override
        public URI deresolve(URI uri) {
            return SCHEME.equals(uri.scheme()) && uri.hasFragment() ? reference(uri.fragment()) : uri;
        }
    }

    static URI reference(String id) {
        return URI.createURI(SCHEME + ":/#" + id);
    }
}
