package org.flexwright.core.session;

/**
 * A plugin that wrote details into a project and is not here; its data is kept as it is.
 *
 * @param nsURI   namespace of the details
 * @param plugin  name of the plugin that wrote them, empty when the file does not say
 * @param version its version, empty when the file does not say
 */
public record MissingPlugin(String nsURI, String plugin, String version) {
}
