package limbway.sim.animal;

import limbway.model.study.Animal;
import limbway.sim.chance.Chance;
import limbway.sim.food.Foraging;
import limbway.sim.habitat.Passages;

/** One animal while it lives through a replication: where it is, what it needs, knows, holds and has used up. */
public final class Ape {

    /** No place: no nest of its own, no stall held. */
    public static final int NONE = -1;

    private final int number;
    private final Animal animal;
    private final Physiology body;
    private Outlook outlook;
    private final Needs needs;
    private final HeatCurve heatCurve;
    private final Worth worth;
    private final Company company;
    private final Account account;
    private final Foraging foraging;
    private final long[] barredUntilMs;
    private int place = NONE;
    private int start = NONE;
    private double heat;
    private long heatAtMs;
    private final Holdings holdings = new Holdings();
    private final Draws draws;
    private final Acquaintance acquaintance;
    private final double[] weights;

    /**
     * An animal at midnight before day 1, nowhere yet.
     *
     * @param number its number in the study
     * @param animal its name, body and rank
     * @param body what it burns
     * @param outlook what it expects of every passage
     * @param needs what it is short of
     * @param heatCurve how hot it is where
     * @param worth what places are worth to it beyond needs
     * @param company who is where, shared by the group
     * @param chance chance of the replication
     * @param foraging what it knows of food
     */
    public Ape(
            int number,
            Animal animal,
            Physiology body,
            Outlook outlook,
            Needs needs,
            HeatCurve heatCurve,
            Worth worth,
            Company company,
            Chance chance,
            Foraging foraging) {
        this.number = number;
        this.animal = animal;
        this.body = body;
        this.outlook = outlook;
        this.needs = needs;
        this.heatCurve = heatCurve;
        this.worth = worth;
        this.company = company;
        this.account = new Account(-needs.missingJ());
        int resources = foraging.places();
        this.foraging = foraging;
        this.draws = new Draws(chance, animal.name(), resources);
        this.acquaintance = new Acquaintance(resources);
        this.barredUntilMs = new long[resources];
        this.weights = new double[resources];
    }

    /**
     * Its number in the study.
     *
     * @return 0 or more
     */
    public int number() {
        return number;
    }

    /**
     * Who it is.
     *
     * @return name, body and rank
     */
    public Animal animal() {
        return animal;
    }

    /**
     * What its body burns and takes in.
     *
     * @return figures of the body
     */
    public Physiology body() {
        return body;
    }

    /**
     * What it expects of every passage.
     *
     * @return shared by all animals with the same body
     */
    public Outlook outlook() {
        return outlook;
    }

    /**
     * Expects something else, because a door was opened or shut.
     *
     * @param newOutlook what it expects of every passage from now on; its starts have the same numbers
     */
    public void expect(Outlook newOutlook) {
        outlook = newOutlook;
    }

    /**
     * What it is short of.
     *
     * @return its needs, which change
     */
    public Needs needs() {
        return needs;
    }

    /**
     * Lets time pass at the place where it is, or that it left last.
     *
     * @param nowMs the new time, not before the last one [ms]
     */
    public void advance(long nowMs) {
        needs.advance(nowMs);
        if (heatCurve.counts()) {
            heat = heatCurve.after(heat, start, heatAtMs, nowMs);
        }
        heatAtMs = nowMs;
    }

    /**
     * How heat troubles it, at the time to which it was advanced.
     *
     * @return 0 to 1
     */
    public double heat() {
        return heat;
    }

    HeatCurve heatCurve() {
        return heatCurve;
    }

    /**
     * What it has taken in and used up.
     *
     * @return its account, which changes
     */
    public Account account() {
        return account;
    }

    /**
     * The resource at which it is, or was last.
     *
     * @return number of a resource
     */
    public int place() {
        return place;
    }

    /**
     * The start at which it is, or was last.
     *
     * @return number of a start of its passages
     */
    public int start() {
        return start;
    }

    /**
     * What it holds or waits for.
     *
     * @return its nest, stall and queue, which change
     */
    public Holdings holdings() {
        return holdings;
    }

    /**
     * Comes to a place.
     *
     * @param newPlace number of a resource
     * @param newStart number of the start at which it stands there
     */
    public void arrive(int newPlace, int newStart) {
        if (newPlace != place) {
            acquaintance.arrive(needs.atMs());
            foraging.memory().leave();
        }
        place = newPlace;
        start = newStart;
        company.see(number, newStart);
    }

    /**
     * Sets out for a place.
     *
     * @param passage number of the passage
     * @param off true for the way off the ground
     */
    public void setOut(int passage, boolean off) {
        Passages passages = outlook.passages();
        acquaintance.leave(place, needs.atMs(), passages.ms(passage, off), passages.addedShare(passage, off));
        company.see(number, passages.end(passage, off));
    }

    /**
     * Who is where.
     *
     * @return shared by the group
     */
    public Company company() {
        return company;
    }

    /**
     * What places are worth to it beyond needs.
     *
     * @return shared by all animals with the same body
     */
    public Worth worth() {
        return worth;
    }

    /** Room for what it weighs in a decision, one number for each resource. */
    double[] weights() {
        return weights;
    }

    /** When it came to the place where it is, or left the one where it was last [ms]. */
    long arrivedMs() {
        return acquaintance.arrivedMs();
    }

    /** How well it knows places. */
    Acquaintance acquaintance() {
        return acquaintance;
    }

    /** How long it has been at a place since the days count, all visits together [h]. */
    double hoursAt(int resource) {
        return acquaintance.hoursAt(resource) + (resource == place ? acquaintance.hoursHere(needs.atMs()) : 0);
    }

    /**
     * The days begin that count: its account and what it grows familiar with start anew.
     *
     * @param nowMs time, to which it has been advanced [ms]
     */
    public void count(long nowMs) {
        account.restart(-needs.missingJ(), nowMs);
        acquaintance.restart(nowMs);
    }

    /** The chance in its decisions. */
    Draws draws() {
        return draws;
    }

    /**
     * Begins a decision.
     *
     * @param day day of the run, from 1; each day numbers its decisions anew, so that chance falls into step again
     * @return number of the decision, for the streams of chance
     */
    public long nextDecision(int day) {
        return draws.nextDecision(day);
    }

    /**
     * Its last decision.
     *
     * @return number of the decision, for the streams of chance
     */
    public long lastDecision() {
        return draws.lastDecision();
    }

    /**
     * Whether it takes the way off the ground.
     *
     * @param passage number of an open passage
     * @param decision number of the decision
     * @param nowMs time of setting out [ms]
     * @return true for the way off the ground
     */
    public boolean goesOffGround(int passage, long decision, long nowMs) {
        return draws.ofWay(decision) < outlook.offGroundShare(passage, nowMs, worth.strangeness(this, nowMs));
    }

    /**
     * Keeps away from a place for a while.
     *
     * @param resource number of a resource
     * @param untilMs when it would go there again [ms]
     */
    public void bar(int resource, long untilMs) {
        barredUntilMs[resource] = untilMs;
    }

    /**
     * When it would go to a place again.
     *
     * @param resource number of a resource
     * @return time [ms], in the past for most places
     */
    public long barredUntilMs(int resource) {
        return barredUntilMs[resource];
    }

    /**
     * What it knows of food.
     *
     * @return its knowledge, which changes
     */
    public Foraging foraging() {
        return foraging;
    }

    double believedJ(int resource, long nowMs) {
        return foraging.memory().expectedJ(resource, nowMs);
    }

    /**
     * Wakes, and spends evenly from now on what it spends on all that is not moving about.
     *
     * @param nowMs time, to which it was advanced [ms]
     * @param wakingMs length of this waking day [ms]
     */
    public void wake(long nowMs, long wakingMs) {
        spendEvenly(nowMs, body.otherJPerDay() / wakingMs);
    }

    /**
     * Falls asleep.
     *
     * @param nowMs time, to which it was advanced [ms]
     */
    public void sleep(long nowMs) {
        spendEvenly(nowMs, 0);
    }

    private void spendEvenly(long nowMs, double perMs) {
        needs.spendEvenly(perMs);
        account.spendEvenly(nowMs, perMs);
    }
}
