/**
 * An enclosure as a scene in space, written as open glTF 2.0 binary that 3D viewers read.
 *
 * <p>Knows the model and compiled layouts; draws nothing and computes no measure. Three steps, one after the other: what
 * stands there becomes named nodes ({@link limbway.reports.scene.SceneNode}), their shapes become meshes, and the nodes
 * become bytes. Start at {@link limbway.reports.scene.EnclosureGlb}. {@link limbway.reports.scene.PaintedMeshes} hands the
 * same shapes, one mesh for each paint, to the replay.
 */
package limbway.reports.scene;
