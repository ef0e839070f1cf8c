package limbway.sim.experiment.link;

import limbway.sim.experiment.Progress;

/** A part of a search, told under its own name; so many of its things were known before. */
record Stage(String words, SearchProgress progress, int known) implements Progress {

    Stage(String words, SearchProgress progress) {
        this(words, progress, 0);
    }

    @Override
    public void finished(int done, int total) {
        progress.at(words, known + done, known + total);
    }

    @Override
    public boolean wantsStop() {
        return progress.wantsStop();
    }

    /** Tells how much there is to be done before the first of it is. */
    Stage begun(int total) {
        if (total > 0) {
            finished(0, total);
        }
        return this;
    }
}
