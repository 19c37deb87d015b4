package trammel.catalog;

import java.math.BigDecimal;

/** An amount in the catalog's currency, kept exactly. */
public record Money(BigDecimal amount) implements Comparable<Money> {

  /**
   * Reads {@code 212} or {@code 212.50}.
   *
   * @throws IllegalArgumentException if the text is no amount of at least nothing with at most two
   *     decimals
   */
  public static Money parse(String text) {
    if (!text.strip().matches("[0-9]{1,7}([.][0-9]{1,2})?")) {
      throw new IllegalArgumentException(
          "'"
              + text
              + "' is no price; expected an amount such as 212 or 212.50, without a currency sign");
    }
    return new Money(new BigDecimal(text.strip()).setScale(2));
  }

  public Money plus(Money other) {
    return new Money(amount.add(other.amount));
  }

  public Money times(int count) {
    return new Money(amount.multiply(BigDecimal.valueOf(count)));
  }

  @Override
  public int compareTo(Money other) {
    return amount.compareTo(other.amount);
  }

  @Override
  public String toString() {
    return amount.toPlainString();
  }
}
