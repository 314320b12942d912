package wisp.simulation;

/**
 * How colostrum gets into a calf, and what it leaves in the blood.
 *
 * @param medianHours median delay to the first feed (lognormal)
 * @param sigma standard deviation of the log delay
 * @param nightRatio what a birth at 22–06 h multiplies the median by
 * @param volumeL mean of a first feed, litres
 * @param volumeSdL its standard deviation
 * @param suckledShare share that suckle, their volume not measured
 * @param brixPercent mean Brix of the colostrum
 * @param brixSd its standard deviation
 * @param iggGL median serum IgG without deficit at mean Brix and median delay, g/l
 * @param iggSigma standard deviation of log IgG
 * @param iggPerDeficit log IgG lost by a whole deficit
 * @param iggPerHour log IgG lost for each hour of delay past 2 h
 * @param iggPerBrix log IgG gained for each percent of Brix above the mean
 */
public record ColostrumFeeding(
        double medianHours,
        double sigma,
        double nightRatio,
        double volumeL,
        double volumeSdL,
        double suckledShare,
        double brixPercent,
        double brixSd,
        double iggGL,
        double iggSigma,
        double iggPerDeficit,
        double iggPerHour,
        double iggPerBrix) {}
