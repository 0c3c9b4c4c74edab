package cradlewright.diagrams.shared;

import cradlewright.report.scene.Item;
import cradlewright.report.scene.Scene;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Stands for an item of a scene as long as there is one with its key, while the item itself is a new one after every edit. */
public final class SceneNode {

    private Item item;

    private SceneNode(Item item) {
        this.item = item;
    }

    /** Returns the item as it is now. */
    public Item item() {
        return item;
    }

    /** The nodes of a scene that changes. */
    public static final class Nodes {

        private Map<Item.Key, SceneNode> byKey = new HashMap<>();
        private List<SceneNode> inOrder = List.of();

        /** Takes the items of a scene; nodes of items that are gone go too. */
        public void show(Scene scene) {
            Map<Item.Key, SceneNode> kept = new HashMap<>();
            List<SceneNode> order = new ArrayList<>();
            for (Item item : scene.items()) {
                SceneNode node = byKey.computeIfAbsent(item.key(), key -> new SceneNode(item));
                node.item = item;
                kept.put(item.key(), node);
                order.add(node);
            }
            byKey = kept;
            inOrder = List.copyOf(order);
        }

        /** Returns the nodes in the order of drawing. */
        public List<SceneNode> all() {
            return inOrder;
        }
    }
}
