package org.flexwright.core.session;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

import org.flexwright.core.Message;
import org.flexwright.model.Project;

/**
 * What opening a project gave.
 *
 * @param folder     the project's folder
 * @param files      its files
 * @param project    the project with the edits of the journal
 * @param index      its objects by address
 * @param packages   known packages and stand-ins
 * @param base       name of the saved file's content
 * @param fileBytes  its size
 * @param lastNumber number of the last journal line in it
 * @param journal    the journal, null when read-only
 * @param lock       the lock, null when read-only
 * @param readOnly   why it is read-only, null when it is not
 * @param missing    plugins that are not here
 * @param notices    what there is to say
 */
record OpenedProject(Path folder, ProjectFiles files, Project project, ModelIndex index, Packages packages, String base, int fileBytes,
        long lastNumber, Journal journal, FolderLock lock, Message readOnly, List<MissingPlugin> missing, List<Message> notices) {

    void release() throws IOException {
        if (lock != null) {
            try (journal) {
                lock.release();
            }
        }
    }
}
