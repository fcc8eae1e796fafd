using System.Globalization;
using System.Net;
using System.Text.Json;
using CsCheck;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using Slantwise.Desk.Pages.Lessons;
using Slantwise.Desk.Pages.Sheets;
using Slantwise.Desk.Words;
using Slantwise.Engines.Drawing;
using Slantwise.Engines.Statistics.Reach;
using Slantwise.Paper;
using Slantwise.Paper.Cards;
using Slantwise.Paper.LessonPages;
using Slantwise.Paper.Posters;
using Slantwise.Records.Checks;
using Slantwise.Records.Entries;
using Slantwise.Records.Evidence;
using Slantwise.Records.Evidence.Reach;
using Slantwise.Records.Floor;
using Slantwise.Records.Lessons;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;
using Slantwise.Surface.Tests.Paper;

namespace Slantwise.Surface.Tests.Safety;

/// <summary>
/// Whatever a school allows and whatever is ruled out for a pupil, no way out of the program shows what was removed, and every way shows all that was not. What is left
/// is found by a plain second version of the rule.
/// </summary>
public sealed class NothingRemovedTests
{
    private static readonly CultureInfo English = CultureInfo.GetCultureInfo("en-GB");
    private static readonly PaperOptions A4 = new(PaperSize.A4, English);

    [Fact]
    public void Paper_AnyLesson_PupilsSheetsShowAllThatIsLeftAndNothingThatIsRemoved() => OfferGen.Lessons.Sample(
        record =>
        {
            foreach (var pupil in record.Pupils)
                Shows(record, pupil, Run([.. TaskSheetPages.Of(record with { Pupils = [pupil] }, A4).Select(p => p.Scene)]));
            Shows(record, null, Run([.. TaskSheetPages.Of(record with { Pupils = [] }, A4 with { SpareCount = 1 }).Select(p => p.Scene)]));
        },
        iter: 60);

    [Fact]
    public void Paper_AnyLesson_WhatEverybodySeesIsAsIfRemovedLevelsHadNeverBeen() => OfferGen.Lessons.Sample(
        record =>
        {
            Shows(record, null, Run(ClassSheetPages.Of(record, A4)));
            Shows(record, null, Run(StationCardPages.Of(record, A4)));
            Shows(record, null, Run(PosterPages.Of(record, A4)));
            HidesRemoved(record, null, Run(LessonPage.Of(record, LessonPlans.None, A4 with { NamesOtherLevels = true })));

            // Figures are shapes and have no names: with what the policy removes taken off the sheet, every shape is the same.
            var without = record with { Sheet = record.Sheet! with { Content = LeftOf(record) } };
            foreach (var pages in (Func<LessonRecord, IReadOnlyList<Scene>>[])
            [
                r => StationCardPages.Of(r, A4), r => CueCardPages.Of(r, A4), r => PosterPages.Of(r, A4), r => [.. ObservationPages.Of(r, A4).Select(p => p.Scene)], r => ClassSheetPages.Of(r, A4),
            ])
                Assert.Equal(pages(without).Select(SvgOf), pages(record).Select(SvgOf));
        },
        iter: 30);

    [Fact]
    public void Floor_AnyLesson_EveryDeviceGetsWhatItsPupilsAreOfferedAndNothingElse() => OfferGen.Lessons.Sample(
        record =>
        {
            foreach (var (kind, served) in (IReadOnlyList<(FloorDeviceKind, Pupil[])>)
            [
                (FloorDeviceKind.Pupil, [record.Pupils[0]]), (FloorDeviceKind.Pair, [record.Pupils[0], record.Pupils[1]]), (FloorDeviceKind.Station, []),
                (FloorDeviceKind.Teacher, []), (FloorDeviceKind.Board, []),
            ])
            {
                var bundle = LessonBundles.Of(record, kind, [.. served.Select(p => p.Id)], English);
                var text = JsonSerializer.Serialize(bundle);
                var shown = kind == FloorDeviceKind.Board ? [null] : served.Length > 0 ? served : record.Pupils.ToArray<Pupil?>();
                foreach (var level in record.Sheet!.Content.Tasks.SelectMany(t => t.Levels))
                {
                    var isShown = shown.Any(p => OfferGen.IsLeft(record, level, p));
                    Assert.Equal(isShown, text.Contains(level.Name, StringComparison.Ordinal));
                    Assert.Equal(isShown, text.Contains(level.Id.ToString(), StringComparison.Ordinal));
                }
                Assert.All(bundle.Pupils, p => Assert.Equal(
                    record.Sheet!.Content.Tasks.Select(t => string.Join(' ', t.Levels.Where(l => OfferGen.IsLeft(record, l, record.Pupils.Single(q => q.Id == p.PupilId))).Select(l => l.Id))),
                    p.Offers.Select(o => string.Join(' ', o.LevelIds))));
            }
        },
        iter: 100);

    [Fact]
    public void Desk_AnyLesson_LessonPagesOfferWhatIsLeft() => OfferGen.Lessons.Sample(
        record =>
        {
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = English;
            var content = record.Sheet!.Content;
            var table = Rendered<OfferTable>(new() { ["Record"] = record, ["Content"] = content });
            foreach (var pupil in record.Pupils)
            {
                // Row by row: the pupil's name, restrictions, then a cell a task.
                var row = table.Split("<tr>").SingleOrDefault(r => r.Contains($">{pupil.Label} ", StringComparison.Ordinal));
                var left = content.Tasks.Select(t => t.Levels.Select((l, i) => (l, Number: i + 1)).Where(l => OfferGen.IsLeft(record, l.l, pupil)).Select(l => l.Number).ToList()).ToList();
                if (left.Zip(content.Tasks).All(t => t.First.Count == t.Second.Levels.Count))
                {
                    Assert.Null(row);
                    continue;
                }
                foreach (var (numbers, task) in left.Zip(content.Tasks))
                {
                    var said = numbers.Count == 0 ? DeskWords.Say("NoLevelLeft") : numbers.Count == task.Levels.Count ? DeskWords.Say("AllLevels")
                        : DeskWords.SayCount("LevelsOffered", numbers.Count, string.Join(", ", numbers), task.Levels.Count);
                    Assert.Contains(said, row, StringComparison.Ordinal);
                }

                // The page of a sheet, with what the page itself asks the one function for.
                Func<SheetTask, IReadOnlyList<Level>> offered = t => Offer.LevelsFor(t.Levels, record.School.Policy, record.Restrictions.Where(r => r.PupilId == pupil.Id), record.Lesson.Date);
                Shows(record, pupil, Rendered<TaskSheet>(new() { ["Content"] = content, ["Who"] = pupil.Label, ["Offered"] = offered }));
            }
            // Before a sheet is frozen: the check names each level that the policy removes, and the desk says why.
            foreach (var level in content.Tasks.SelectMany(t => t.Levels))
            {
                var isLeft = OfferGen.IsLeft(record, level, null);
                Assert.Equal(isLeft, TaskWords.WhyRemoved(level, record.School.Policy) is null);
                var task = content.Tasks.Single(t => t.Levels.Contains(level));
                Assert.Equal(isLeft, SheetCheck.Of(content with { Tasks = [task with { Levels = [level] }] }, record.School.Policy).All(f => !f.IsRefused));
            }
        },
        iter: 60);

    [Fact]
    public void Entries_AnyLesson_AChoiceOfWhatIsRemovedIsNeverTakenSilently() => OfferGen.Lessons.Sample(
        record =>
        {
            foreach (var pupil in record.Pupils)
            {
                foreach (var task in record.Sheet!.Content.Tasks)
                {
                    foreach (var level in task.Levels)
                    {
                        var entry = new Recorder(record.School.Id, record.Lesson.Id, EntrySource.Desk, "desk", TimeProvider.System, [])
                            .Put(pupil.Id, task.TaskId, 1, null, new Choice(level.Id))!;
                        var isLeft = OfferGen.IsLeft(record, level, pupil);
                        var kept = record with { Entries = [entry] };
                        Assert.Equal(!isLeft, EntryCheck.Of(entry, record).Any(f => f.Key == "ChoiceNotOffered"));
                        Assert.Equal(!isLeft, PupilSheetCheck.Of(kept, pupil.Id).Any(f => f.Key == "ChoiceNotOffered"));
                        var evidence = LessonEvidence.Of(kept).Pupils.Single(p => p.PupilId == pupil.Id);
                        Assert.Equal(!isLeft, evidence.Flags.Any(f => f.Key == "FlagLevelNotOffered"));
                    }
                }
                // Typed by the pupil's own numbers: what is offered counts from 1, what is not comes after.
                var own = Offer.InOwnOrder(record.Sheet!.Content, record.School.Policy, [.. record.Restrictions.Where(r => r.PupilId == pupil.Id)], record.Lesson.Date);
                Assert.All(own.Tasks, t => Assert.Equal([.. t.Levels.OrderBy(l => OfferGen.IsLeft(record, l, pupil) ? 0 : 1).Select(l => l.Id)], t.Levels.Select(l => l.Id)));
            }
        },
        iter: 30);

    [Fact]
    public void Reach_AnyLesson_SaysNothingOfWhatIsRemovedAndAddsNothingThatIs() => OfferGen.Lessons.Sample(
        record =>
        {
            var kept = record.Sheet!.Content.Tasks.Select(t => new MovementTask { SchoolId = record.School.Id, Id = t.TaskId, Name = t.Name, Levels = t.Levels }).ToList();
            // A sheet with every other level, so that the others may be proposed.
            var content = record.Sheet.Content with { Tasks = [.. record.Sheet.Content.Tasks.Select(t => t with { Levels = [.. t.Levels.Where((_, i) => i % 2 == 0)] })] };
            foreach (var reach in ClassReach.Of(content, kept, [], record.Pupils, record.School.Policy, record.Restrictions, record.Lesson.Date, ReachBand.Usual))
            {
                var levels = content.Tasks.Single(t => t.TaskId == reach.TaskId).Levels;
                foreach (var pupil in reach.Pupils)
                    Assert.Equal(levels.Select(l => OfferGen.IsLeft(record, l, record.Pupils.Single(p => p.Id == pupil.PupilId))), pupil.Levels.Select(l => l is not null));
                // What is proposed is left to somebody who is left out.
                Assert.All(reach.Addition?.Levels ?? [], level => Assert.Contains(reach.LeftOut, p => OfferGen.IsLeft(record, level, record.Pupils.Single(q => q.Id == p.PupilId))));
            }
        },
        iter: 20);

    // The sheet without what the policy removes; the spare sheet and the cards of it are the same.
    private static SheetContent LeftOf(LessonRecord record) => record.Sheet!.Content with
    {
        Tasks = [.. record.Sheet.Content.Tasks.Select(t => t with { Levels = [.. t.Levels.Where(l => OfferGen.IsLeft(record, l, null))] })],
    };

    private static void Shows(LessonRecord record, Pupil? pupil, string run)
    {
        Assert.All(OfferGen.Names(record, pupil).Left, name => Assert.Contains(name, run, StringComparison.Ordinal));
        HidesRemoved(record, pupil, run);
    }

    private static void HidesRemoved(LessonRecord record, Pupil? pupil, string run) =>
        Assert.All(OfferGen.Names(record, pupil).Removed, name => Assert.DoesNotContain(name, run, StringComparison.Ordinal));

    private static string Run(IReadOnlyList<Scene> pages) => string.Concat(pages.Select(p => p.Run()));

    private static string SvgOf(Scene scene) => SvgWriter.Write(scene);

    private static string Rendered<T>(Dictionary<string, object?> parameters)
        where T : IComponent
    {
        using var services = new ServiceCollection().AddLogging().BuildServiceProvider();
        using var renderer = new HtmlRenderer(services, services.GetRequiredService<ILoggerFactory>());
        return renderer.Dispatcher.InvokeAsync(async () =>
        {
            CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = English;
            return WebUtility.HtmlDecode((await renderer.RenderComponentAsync<T>(ParameterView.FromDictionary(parameters))).ToHtmlString());
        }).GetAwaiter().GetResult();
    }
}
