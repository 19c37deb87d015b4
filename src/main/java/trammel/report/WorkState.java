package trammel.report;

/** How the vehicle must stand while a step of the work is done. */
enum WorkState {
  AS_IT_STANDS("on level ground, brake on, wheels chocked, nothing taken apart yet"),
  KEY_OUT("on level ground, height control off, key out"),
  ON_STANDS("on stands under the frame, wheels hanging"),
  PRESSURE_RELEASED("on stands under the frame, pressure released, height control off, key out"),
  AXLE_HELD("on stands under the frame, axle or lower arm held on a jack"),
  SPRING_HELD("on stands under the frame, spring held in a compressor"),
  DIFFERENTIAL_HELD("on stands under the frame, differential held on a jack"),
  BODY_HELD("on level ground, body held on beams along its whole length"),
  OFF_THE_VEHICLE("off the vehicle"),
  ON_THE_GROUND("wheels on the ground"),
  AT_RIDE_HEIGHT("wheels on the ground at ride height, on a drive-on lift or over a pit"),
  LOADED("wheels on the ground at ride height, loaded as it is driven"),
  TIRES_COLD("wheels on the ground, tires cold"),
  DRIVEN("after a short drive"),
  DRIVEN_FAR("after 50 to 100 km");

  private final String words;

  WorkState(String words) {
    this.words = words;
  }

  /** As reports say it. */
  @Override
  public String toString() {
    return words;
  }
}
