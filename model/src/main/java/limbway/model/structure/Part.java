package limbway.model.structure;

/**
 * A support, deck or crown, or as much of it as hangs together for a body.
 *
 * <p>A support that a body cannot hold falls into the places where others are fixed to it; each is a part of its name.
 *
 * @param name id of the support, platform or crown
 * @param touchesGround whether the body can step from it to the ground
 */
public record Part(String name, boolean touchesGround) {}
