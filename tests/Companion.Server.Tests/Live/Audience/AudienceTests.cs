using System.Text.Json;
using Companion.Server.Live.Audience;
using Companion.Server.Settings;
using Companion.Server.Tests.Running;
using Companion.Session.Audience;

namespace Companion.Server.Tests.Live.Audience;

/// <summary>What a viewer's page is shown and answered.</summary>
public sealed class AudienceTests
{
    private static readonly string Someone = new('A', 22);
    private static readonly string SomeoneElse = new('Q', 22);

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task A_page_is_shown_the_board_and_each_entry(bool speaksMessagePack)
    {
        await using var companion = await Start();
        await using var presenter = await OpenPresenter(companion);
        await using var viewer = await companion.OpenAudience(speaksMessagePack);
        var board = (await viewer.Sees("Board", HasBoard)).GetProperty("board");
        Assert.Equal(Grids.Textbook.Replace('0', '.'), board.GetProperty("givens").GetString());

        await presenter.Do("PlaceDigit", "r2c2", 6);

        await viewer.Sees("Board", view => HasBoard(view) && view.GetProperty("board").GetProperty("placed").GetString()![10] == '6');
    }

    [Fact]
    public async Task An_answer_goes_to_the_page_that_asked_with_the_picture_of_its_grade_and_to_no_other()
    {
        await using var companion = await Start();
        await using var presenter = await OpenPresenter(companion);
        await using var viewer = await companion.OpenAudienceWithoutKey(Someone);
        await using var other = await companion.OpenAudienceWithoutKey(SomeoneElse);

        var where = await viewer.Ask<JsonElement>("Hint", null, null);

        Assert.Equal("hint", where.GetProperty("kind").GetString());
        Assert.Equal(1, where.GetProperty("grade").GetInt32());
        Assert.Equal("Look at block 1", Assert.Single(Words(where)));
        Assert.Equal(["house"], Kinds(where));
        Assert.All(other.Told, told => Assert.Equal("Board", told.Name));
        Assert.DoesNotContain(other.Told, told => told.View.ToString().Contains("Look at", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_viewer_who_comes_back_goes_on_where_they_were_and_somebody_else_begins_anew()
    {
        await using var companion = await Start(grade: 0);
        await using var presenter = await OpenPresenter(companion);
        await using (var before = await companion.OpenAudienceWithoutKey(Someone))
            Assert.Equal(1, Grade(await before.Ask<JsonElement>("Hint", null, null)));

        await using var back = await companion.OpenAudienceWithoutKey(Someone);
        Assert.Equal(2, Grade(await back.Ask<JsonElement>("Hint", null, null)));
        await using var other = await companion.OpenAudienceWithoutKey(SomeoneElse);
        Assert.Equal(1, Grade(await other.Ask<JsonElement>("Hint", null, null)));
    }

    [Fact]
    public async Task The_rules_of_the_chat_hold_pauses_the_highest_grade_and_asks_that_are_off()
    {
        await using var companion = await Start();
        await using var presenter = await OpenPresenter(companion);
        await using var viewer = await companion.OpenAudienceWithoutKey(Someone);
        await viewer.Ask<JsonElement>("Hint", null, null);
        Assert.StartsWith("Take your time", Words(await viewer.Ask<JsonElement>("Hint", null, null)).Single(), StringComparison.Ordinal);

        await presenter.Do("LimitAsks", true, 1, false);
        Assert.Equal("Hints go as far as grade 1 for now", Words(await viewer.Ask<JsonElement>("Hint", null, 2)).Single());
        await viewer.Sees("Board", view => view.GetProperty("asks").GetProperty("highest").GetInt32() == 1);

        await presenter.Do("LimitAsks", false, 4, false);
        Assert.Equal("nothing", (await viewer.Ask<JsonElement>("Hint", null, null)).GetProperty("kind").GetString());
        await viewer.Sees("Board", view => !view.GetProperty("asks").GetProperty("open").GetBoolean());
    }

    [Fact]
    public async Task Why_a_digit_is_there_is_told_and_drawn()
    {
        await using var companion = await Start();
        await using var presenter = await OpenPresenter(companion);
        await presenter.Do("PlaceDigit", "r2c2", 6);
        await using var viewer = await companion.OpenAudienceWithoutKey(Someone);

        var why = await viewer.Ask<JsonElement>("Why", "r2c2");

        Assert.Equal("reason", why.GetProperty("kind").GetString());
        Assert.Contains("r2c2", Words(why)[0], StringComparison.Ordinal);
        Assert.Contains("lozenge", Kinds(why));
    }

    [Theory]
    [InlineData(6, 1)]
    [InlineData(9, 0)]
    [InlineData(null, 0)]
    public async Task A_call_is_counted_and_nobody_is_told_whether_it_is_right(int? digit, int right)
    {
        await using var companion = await Start();
        await using var presenter = await OpenPresenter(companion);
        await using var viewer = await companion.OpenAudienceWithoutKey(Someone);

        var answer = await viewer.Ask<JsonElement>("Call", "r2c2", digit);

        Assert.Equal("""{"kind":"counted","words":["Counted. Whether it is right shows when the presenter gets there"],"grade":null,"picture":null}""", answer.ToString());
        await presenter.Sees("Viewers", view => view.GetProperty("calls").EnumerateArray().Any(call =>
            call.GetProperty("cell").GetString() == "r2c2"
            && call.GetProperty("viewers").GetInt32() == 1 && call.GetProperty("right").GetInt32() == right));
    }

    [Theory]
    [InlineData("Hint", "r0c1", null)]
    [InlineData("Hint", null, 5)]
    [InlineData("Hint", null, -1)]
    [InlineData("Call", "r1c1", 0)]
    [InlineData("Call", "r1c1", 10)]
    [InlineData("Call", "<b>", 1)]
    [InlineData("Call", null, 1)]
    public async Task What_cannot_be_read_is_answered_by_a_plain_sentence(string method, string? cell, int? number)
    {
        await using var companion = await Start();
        await using var viewer = await companion.OpenAudienceWithoutKey(Someone);

        var answer = await viewer.Ask<JsonElement>(method, cell, number);

        Assert.Equal("notice", answer.GetProperty("kind").GetString());
        Assert.EndsWith(".", Words(answer).Single(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Whoever_asks_too_much_at_once_is_told_to_wait()
    {
        await using var companion = await Start();
        await using var viewer = await companion.OpenAudienceWithoutKey(Someone);

        var answers = await Task.WhenAll(Enumerable.Range(0, 12).Select(_ => viewer.Ask<JsonElement>("Why", "r1c1")));

        Assert.Contains(answers, answer => Words(answer).Contains(AudienceSentences.TooManyAsks));
    }

    [Fact]
    public async Task All_of_one_address_together_ask_no_more_than_it_may()
    {
        await using var companion = await Start(audience: new() { AsksPerMinutePerAddress = 1 });
        var pages = await Task.WhenAll(Enumerable.Range(0, 6).Select(page => companion.OpenAudienceWithoutKey($"page{page}")));

        var answers = await Task.WhenAll(pages.Select(page => page.Ask<JsonElement>("Why", "r1c1")));

        Assert.Equal(1, answers.Count(answer => Words(answer).Contains(AudienceSentences.TooManyAsks)));
        foreach (var page in pages)
            await page.DisposeAsync();
    }

    [Theory]
    [InlineData(1, 600)]
    [InlineData(2000, 10)]
    public async Task A_page_that_floods_is_cut_off_and_the_others_go_on(int calls, int length)
    {
        await using var companion = await Start();
        await using var flooding = await companion.OpenAudienceWithoutKey(Someone);
        await using var viewer = await companion.OpenAudienceWithoutKey(SomeoneElse);

        var asking = Enumerable.Range(0, calls).Select(_ => flooding.Ask<JsonElement>("NoSuchMethod", new string('x', length))).ToList();
        await Assert.ThrowsAnyAsync<Exception>(() => Task.WhenAll(asking));

        await flooding.IsClosed();
        Assert.Equal("notice", (await viewer.Ask<JsonElement>("Why", "r9")).GetProperty("kind").GetString());
    }

    private static Task<RunningCompanion> Start(int? grade = null, AudienceSettings? audience = null) => RunningCompanion.Start(settings: new()
    {
        Port = 0,
        Audience = (audience ?? new()) with { Door = AudienceDoor.Open },
        Asks = new() { DelaySeconds = 0, ViewerPauseSeconds = 0, GradePauseSeconds = grade },
    });

    private static async Task<OpenPage> OpenPresenter(RunningCompanion companion)
    {
        var presenter = await companion.OpenDesk();
        await presenter.Do("LoadPuzzle", Grids.Textbook, "Lanterns", "A setter", "");
        return presenter;
    }

    private static bool HasBoard(JsonElement view) => view.GetProperty("credit") is { ValueKind: JsonValueKind.Object } credit
        && credit.GetProperty("title").GetString() == "Lanterns";

    private static int Grade(JsonElement answer) => answer.GetProperty("grade").GetInt32();

    private static string[] Words(JsonElement answer) =>
        [.. answer.GetProperty("words").EnumerateArray().Select(words => words.GetString()!)];

    private static IEnumerable<string> Kinds(JsonElement answer) =>
        answer.GetProperty("picture").GetProperty("shapes").EnumerateArray().Select(shape => shape.GetProperty("kind").GetString()!).Distinct();
}
