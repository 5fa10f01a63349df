package org.flexwright.core.session;

/** The one thread a project may be read and changed on: the screen's thread in the window, the main thread on the command line. */
public interface ModelThread {
    /** True when called on that thread. */
    boolean isCurrent();

    /** Runs the work on that thread and returns when it is done; at once when called on it. */
    void run(Runnable work);

    /** Model thread of a program without a screen: the thread that calls this. Work cannot be handed to it from another one. */
    static ModelThread current() {
        Thread owner = Thread.currentThread();
        return new ModelThread() {
            @Override
            public boolean isCurrent() {
                return Thread.currentThread() == owner;
            }

            @Override
            public void run(Runnable work) {
                if (!isCurrent()) {
                    throw new IllegalStateException("The model belongs to thread " + owner.getName() + ".");
                }
                work.run();
            }
        };
    }
}
