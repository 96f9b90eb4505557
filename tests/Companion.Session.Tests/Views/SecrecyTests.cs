using System.Reflection;
using Companion.Engine;
using Companion.Engine.Planning;
using Companion.Engine.Proofs;
using Companion.Session.Asks.Calls;
using Companion.Session.Asks.Viewers;
using Companion.Session.Audience;
using Companion.Session.Commands;
using Companion.Session.Planning;
using Companion.Session.Scanning;
using Companion.Session.State;
using Companion.Session.Tests.Audience;
using Companion.Session.Views;

namespace Companion.Session.Tests.Views;

public sealed class SecrecyTests
{
    private static readonly Type[] PublicTypes = [typeof(OverlayView), typeof(StageView), typeof(AudienceView)];

    private static readonly Type[] Secret =
    [
        typeof(Solution), typeof(Puzzle), typeof(Board), typeof(Grid), typeof(SessionState), typeof(Chosen), typeof(Cue),
        typeof(ScanResult), typeof(Found), typeof(Hints), typeof(HintTexts), typeof(DeskCell), typeof(OpenDeduction),
        typeof(CueView), typeof(WatchNote), typeof(ViewersView), typeof(CellCalls), typeof(ViewerId),
        typeof(CueList), typeof(CallOut), typeof(CuesView), typeof(CuedDeduction),
        typeof(EntryProof), typeof(ProofStep), typeof(WhyView), typeof(Attribution),
        typeof(Outlook), typeof(Prospect), typeof(Forecast), typeof(NearMiss), typeof(ForecastView),
    ];

    [Fact]
    public void What_is_public_has_no_field_for_what_is_not()
    {
        var reachable = Reachable(PublicTypes);

        // The walk is worth something only if it reaches what is meant to be there.
        Assert.Superset(
            new HashSet<Type> { typeof(WhereHint), typeof(WhyHint), typeof(Deduction), typeof(StageCell) }, reachable);
        Assert.Empty(reachable.Intersect(Secret));
    }

    [Theory]
    [MemberData(nameof(ReplayTests.FewSeeds), MemberType = typeof(ReplayTests))]
    public void No_public_view_holds_the_solution_a_deduction_that_is_not_on_air_or_more_than_the_grade(int seed) =>
        RandomSession.Of(seed, commands: 80, afterEach: session =>
        {
            var views = PublicTexts(session.State);
            var onAir = session.State.OnAir?.Deduction;
            foreach (var found in session.Scan().Open.Where(found => !found.Deduction.Equals(onAir)))
                Assert.DoesNotContain(found.Deduction.ToString(), views, StringComparison.Ordinal);
            if (session.State.OnAir is { } cue)
                Assert.All(Above(cue), words => Assert.DoesNotContain(words, views, StringComparison.Ordinal));
            if (session.State.Grid.Puzzle is { } puzzle)
                Assert.DoesNotContain(puzzle.Solution.ToString(), views, StringComparison.Ordinal);
        });

    [Theory]
    [InlineData(Puzzles.Easy)]
    [InlineData(Puzzles.Demo)]
    public void No_public_view_holds_more_than_the_grade_on_air(string puzzle)
    {
        var session = PlayedSession.Of(puzzle);
        var open = session.Scan().Open;
        foreach (var deduction in open.Select(found => found.Deduction))
        {
            session.Do(new StandBy(deduction), new ClearAir());
            var hints = ShippedVoice.Voice.Wording.HintsFor(session.State.Standby!.Board, deduction);
            Assert.DoesNotContain(hints.Where.Words.Spoken, PublicTexts(session.State), StringComparison.Ordinal);
            foreach (var grade in Enum.GetValues<Grade>())
            {
                session.Do(new NextGrade());
                var views = PublicTexts(session.State);
                Assert.Contains(hints[grade].Words.Spoken, views, StringComparison.Ordinal);
                foreach (var more in Enum.GetValues<Grade>().Where(other => other > grade))
                    Assert.DoesNotContain(hints[more].Words.Spoken, views, StringComparison.Ordinal);
                if (grade < Grade.Why)
                    Assert.All(Conclusions(deduction), text => Assert.DoesNotContain(text, views, StringComparison.Ordinal));
                if (grade < Grade.Which)
                    Assert.DoesNotMatch("r[1-9]c[1-9]", views);
            }

            session = PlayedSession.Of(puzzle);
        }
    }

    private static IEnumerable<string> Above(Cue cue)
    {
        var hints = ShippedVoice.Voice.Wording.HintsFor(cue.Chosen.Board, cue.Deduction);
        return Enum.GetValues<Grade>().Where(grade => grade > cue.Grade).Select(grade => hints[grade].Words.Spoken);
    }

    // The whole conclusion as it is written; a part of it may be a standing candidate of the pattern.
    private static string[] Conclusions(Deduction deduction) =>
        [.. new[] { deduction.Places, deduction.Removes }.Where(set => !set.IsEmpty).Select(set => $"\"{set}\"")];

    private static string PublicTexts(SessionState state) => string.Join(
        '\n',
        PlainJson.Of(PublicViews.Overlay(state, Scenes.Main, ShippedVoice.Voice)),
        PlainJson.Of(PublicViews.Stage(state, ShippedVoice.Voice)),
        PlainJson.Of(AudienceShow.SeenAtOnce(state)));

    private static HashSet<Type> Reachable(IEnumerable<Type> from)
    {
        var reached = new HashSet<Type>();
        var rest = new Queue<Type>(from);
        while (rest.TryDequeue(out var type))
        {
            if (!reached.Add(type) || type.IsPrimitive || type == typeof(string))
                continue;
            foreach (var field in FieldsOf(type))
                rest.Enqueue(field.FieldType);
            foreach (var argument in type.GenericTypeArguments)
                rest.Enqueue(argument);
            if (type.GetElementType() is { } element)
                rest.Enqueue(element);
            foreach (var derived in type.Assembly.GetTypes().Where(other => other.BaseType == type && type.IsAbstract))
                rest.Enqueue(derived);
        }

        return reached;
    }

    private static IEnumerable<FieldInfo> FieldsOf(Type? type) => type is null
        ? []
        : type.GetFields(BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly)
            .Concat(FieldsOf(type.BaseType));
}
