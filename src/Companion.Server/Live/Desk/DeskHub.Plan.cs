using Companion.Engine;
using Companion.Server.Wire;
using Companion.Session.Commands;
using Companion.Session.Views;

namespace Companion.Server.Live.Desk;

/// <content>What a panel can ask for about the plan of a puzzle.</content>
internal sealed partial class DeskHub
{
    public Task<Reply> FeatureRules(FeaturedRule?[]? featured) => Ask(_ => new FeatureRules(new(
        [.. (featured ?? []).Select(each => new FeaturedRule(Rule(each?.Rule.Value ?? ""), each?.IsEarly ?? false).ToFeature())])));

    public Task<Reply> NoteStep(string? places, string? removes, string? text) =>
        Ask(_ => new NoteStep(CandidateSet.Parse(places ?? ""), CandidateSet.Parse(removes ?? ""), text ?? ""));

    public Task<Reply> Vet(string? grid, string?[]? rules) => Task.FromResult(vetter.Ask(
        Caller,
        Context.ConnectionId,
        () => (grid ?? "", [.. (rules ?? []).Select(rule => Rule(rule ?? ""))]),
        Context.ConnectionAborted));
}
