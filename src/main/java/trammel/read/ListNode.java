package trammel.read;

import java.util.List;

/** Items in order. */
public record ListNode(Place place, Trail trail, List<Node> items) implements Node {
  public ListNode {
    items = List.copyOf(items);
  }

  @Override
  public String words() {
    return "a list";
  }
}
