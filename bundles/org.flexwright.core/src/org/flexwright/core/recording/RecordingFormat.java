package org.flexwright.core.recording;

/** What sort of file a recording kind reads. */
public enum RecordingFormat {
    /** Columns of figures in a text file. */
    TABLE,
    /** Sound in a RIFF WAVE file. */
    SOUND
}
