using Companion.Engine.Search;

namespace Companion.Engine.Planning;

/// <summary>
/// Makes puzzles until enough are as wanted. Each try is a full grid at random from which givens are taken away (top-down); what does
/// not fit the order is dropped. A generator of this kind makes easy puzzles more often than they are among all minimal ones, and so
/// do those that add givens (D. Berthier, CISSE 2009, DOI 10.1007/978-90-481-9112-3_16); what is dropped does not make it fairer.
/// </summary>
public static class PuzzleMaker
{
    // The tries of one turn are spread over the cores; a turn ends with the slowest of them.
    private const int TriesEach = 64;

    /// <summary>
    /// Makes puzzles one after the other. Which come, and in which order, follows from the order and the seed alone and not from how
    /// many cores there are. The seed itself is tried first, so that the seed of a puzzle that was made makes it again.
    /// </summary>
    /// <param name="order">What is wanted.</param>
    /// <param name="seed">Any number.</param>
    /// <param name="cores">How many cores to use, 1 or more.</param>
    /// <param name="progress">Told how many puzzles were tried so far, from several threads; null where nobody wants to know.</param>
    /// <param name="most">How many puzzles to try at most; without end by default.</param>
    /// <param name="cancel">Stops it.</param>
    /// <returns>Puzzles, without end unless <paramref name="most"/> is given: take as many as are wanted.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="cores"/> is less than 1.</exception>
    /// <exception cref="OperationCanceledException"><paramref name="cancel"/> was signalled.</exception>
    public static IEnumerable<MadePuzzle> Make(
        Order order, ulong seed, int cores, IProgress<long>? progress = null, long most = long.MaxValue, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(order);
        ArgumentOutOfRangeException.ThrowIfLessThan(cores, 1);
        return Tries();

        IEnumerable<MadePuzzle> Tries()
        {
            var (next, dice) = (seed, new Dice(seed));
            var (begun, tried) = (0L, 0L);
            while (begun < most)
            {
                var seeds = new ulong[Math.Min(TriesEach * cores, most - begun)];
                for (var index = 0; index < seeds.Length; index++)
                    (seeds[index], next) = (next, dice.Next());
                begun += seeds.Length;
                var made = new MadePuzzle?[seeds.Length];
                Parallel.For(
                    0,
                    seeds.Length,
                    new ParallelOptions { MaxDegreeOfParallelism = cores, CancellationToken = cancel },
                    index =>
                    {
                        made[index] = order.Try(seeds[index], cancel);
                        progress?.Report(Interlocked.Increment(ref tried));
                    });
                foreach (var puzzle in made.OfType<MadePuzzle>())
                    yield return puzzle;
            }
        }
    }
}
