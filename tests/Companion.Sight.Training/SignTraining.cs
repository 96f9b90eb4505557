using Companion.Sight.Reading;
using Companion.Sight.Samples;
using Companion.Sight.Training.Network;
using Companion.Sight.Training.Onnx;
using Companion.Sight.Training.Recording;

namespace Companion.Sight.Training;

/// <summary>Trains the network that reads signs among what stands around them, tests it and writes it.</summary>
/// <param name="options">How.</param>
internal sealed class SignTraining(BoardOptions options)
{
    /// <summary>Does it.</summary>
    public void Run()
    {
        var shop = new Workshop();
        var samples = SignSet.Paint(options.Seed, options.Boards, shop.Training, options.Threads);
        shop.Say($"{samples.Count} signs cut out of {options.Boards} boards");
        var tuning = SignSet.Paint(options.Seed + 1, options.Tests, shop.Tuning, options.Threads);
        var heldOut = SignSet.Paint(options.Seed + 2, options.Tests, shop.HeldOut, options.Threads);
        using var network = Trainer.Train(samples, options.Seed, options.Rounds, options.Threads, (round, loss) => shop.Say($"round {round + 1}: loss {loss:0.0000}"));
        var sums = Calibration.Sums(network, tuning);
        var classes = new Calibration([.. sums.Select(all => all[..GlyphSample.Classes])], tuning.Kinds);
        var lines = OfTwo(sums, GlyphSample.Classes, tuning.Lines, tuning.IsDigit);
        var covers = OfTwo(sums, GlyphSample.Classes + 1, tuning.Covers, index => tuning.IsDigit(index) && tuning.Covers[index] != SignSet.Between);
        var (temperature, forLines, forCovers) = (classes.Temperature(), lines.Temperature(), covers.Temperature());
        shop.Say($"right of the tuning signs: {100 * classes.Right:0.00} %, lines {100 * lines.Right:0.00} %, temperatures {temperature:0.000}, {forLines:0.000}, {forCovers:0.000}");

        var model = ReadingModel.Signs(network, temperature, forLines, forCovers);
        using var reader = new SignReader(model);
        if (Math.Abs(SignFigures.Of(reader, tuning).Right - classes.Right) > 0.001)
            throw new InvalidOperationException("The model that was written does not read what the trained network reads.");
        var figures = SignFigures.Of(reader, heldOut);
        shop.Say($"{figures.Wrong} of {figures.Count} wrong, {figures.WrongEntered} of them surely, {figures.HeldBack} unsure; lines: {figures.Lines}");
        var record = new SignRecord().Add(model, network.parameters().Sum(part => part.numel()), options, samples, (temperature, forLines, forCovers))
            .Add(figures)
            .Add("Trained on", shop.Training)
            .Add("Tuned on (temperatures)", shop.Tuning)
            .Add("Never trained on", shop.HeldOut);
        shop.Write("signs.onnx", model, "signs.md", record.ToString());
    }

    // A sum of its own, beside one that is always 0.
    private static Calibration OfTwo(IReadOnlyList<float[]> sums, int at, byte[] kinds, Func<int, bool> isCounted)
    {
        var counted = Enumerable.Range(0, kinds.Length).Where(isCounted).ToList();
        return new(counted.ConvertAll(index => new[] { 0, sums[index][at] }), counted.ConvertAll(index => kinds[index]));
    }
}
