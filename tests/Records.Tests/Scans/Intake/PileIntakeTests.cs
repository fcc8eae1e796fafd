using Slantwise.Engines.Marks;
using Slantwise.Records.Entries;
using Slantwise.Records.Roster;
using Slantwise.Records.Scans;
using Slantwise.Records.Scans.Intake;
using Slantwise.Records.Scans.Pictures;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tests.Stores;
using static Slantwise.Records.Tests.Entries.InventedLesson;

namespace Slantwise.Records.Tests.Scans.Intake;

public sealed class PileIntakeTests
{
    private static readonly string[] OneSet = ["Level-1-1-2", "Predicted-1-1-3", "Held-1-1-1", "NotYet-1-1-2"];

    private static async Task<TestStore> StoreAsync(Database database = Database.Sqlite, PictureKeeping? keeping = null)
    {
        var test = await TestStore.OpenAsync(database);
        var store = test.Store;
        await store.SaveSchoolAsync(Taught.School with { Pictures = keeping ?? new PictureKeeping() });
        await store.SaveRosterAsync(SchoolId, new RosterSave
        {
            Classes = [Taught.Class], Pupils = [Alba, Bruno, Carys],
            Enrolments = [.. new[] { Alba, Bruno, Carys }.Select(p => new Enrolment { SchoolId = SchoolId, ClassId = ClassId, PupilId = p.Id })],
        });
        await store.SaveSheetAsync(new Sheet { SchoolId = SchoolId, Id = Taught.Lesson.SheetId!.Value, Name = "Towers", Draft = Towers });
        await store.FreezeSheetAsync(SchoolId, Taught.Lesson.SheetId.Value);
        await store.SaveLessonAsync(Taught.Lesson);
        await store.KeepLayoutsAsync(SchoolId, [PaperSheet.Kept]);
        return test;
    }

    private static async Task<List<TakenPage>> TakeAsync(IStore store, IReadOnlyList<ReadPage> pages, IntakeOptions? options = null)
    {
        var reader = new PlannedReader((file, expected) => pages.Where(p => p.File == file).Select(p =>
            p.Forms is [{ CodeFound: CodeFound.None }] && expected.WithoutCode.All(k => k.LayoutTag != p.Forms[0].LayoutTag)
                ? p with { Forms = [p.Forms[0] with { LayoutTag = null, Layout = null }] }
                : p));
        var taken = new List<TakenPage>();
        var files = pages.Select(p => p.File).Distinct().Select(f => ScanFile.Of(f, []));
        await foreach (var page in new PileIntake(store, reader, SchoolId, Clock).TakeAsync(files, options ?? new IntakeOptions())) taken.Add(page);
        return taken;
    }

    private static async Task<int> EntryCountAsync(IStore store) => (await store.ListEntriesAsync(SchoolId, LessonId)).Count;

    [Fact]
    public async Task Take_CertainPages_AddsEntriesAndKeepsNoPhoto()
    {
        await using var test = await StoreAsync();
        var taken = await TakeAsync(test.Store, [PaperSheet.Page("a.jpg", PaperSheet.Form(PaperSheet.Code(Alba.Id), OneSet)), PaperSheet.Page("b.jpg", PaperSheet.Form(PaperSheet.Code(Bruno.Id), OneSet))]);
        Assert.Equal([4, 4], taken.Select(p => p.Forms[0].Added.Count));
        Assert.Equal(8, await EntryCountAsync(test.Store));
        foreach (var scan in await test.Store.ListScansAsync(SchoolId, LessonId))
        {
            Assert.Equal(ScanState.Done, scan.State);
            Assert.Empty(await test.Store.ListScanPicturesAsync(SchoolId, scan.Id));
        }
    }

    [Fact]
    public async Task Take_TheSamePileTwice_AddsNothingTheSecondTime()
    {
        await using var test = await StoreAsync();
        var pile = new[]
        {
            PaperSheet.Page("a.jpg", PaperSheet.Form(PaperSheet.Code(Alba.Id), [.. OneSet, "?Held-1-1-3"])),
            PaperSheet.Page("b.jpg", PaperSheet.Form(PaperSheet.Spare(2), OneSet)),
            PaperSheet.Page("c.jpg", PaperSheet.Form(null, OneSet)),
        };
        await TakeAsync(test.Store, pile);
        var (entries, scans) = (await EntryCountAsync(test.Store), await test.Store.ListScansAsync(SchoolId, LessonId));
        Assert.Equal((4, 3), (entries, scans.Count));
        var again = await TakeAsync(test.Store, pile);
        Assert.All(again, p => Assert.True(p.Forms[0] is { IsAgain: true, Added.Count: 0 }));
        Assert.Equal(entries, await EntryCountAsync(test.Store));
        Assert.Equal(scans.Select(s => s.Id).Order(), (await test.Store.ListScansAsync(SchoolId, LessonId)).Select(s => s.Id).Order());
    }

    [Fact]
    public async Task Take_APageTwiceInOnePile_IsTakenOnce()
    {
        await using var test = await StoreAsync();
        var taken = await TakeAsync(test.Store, [PaperSheet.Page("a.jpg", PaperSheet.Form(PaperSheet.Code(Alba.Id), OneSet)), PaperSheet.Page("b.jpg", PaperSheet.Form(PaperSheet.Code(Alba.Id), OneSet))]);
        Assert.Equal([(4, false), (0, true)], taken.Select(p => (p.Forms[0].Added.Count, p.Forms[0].IsAgain)));
    }

    [Fact]
    public async Task Take_DryRun_StoresNothingAndSaysTheSame()
    {
        await using var test = await StoreAsync();
        var pile = new[] { PaperSheet.Page("a.jpg", PaperSheet.Form(PaperSheet.Code(Alba.Id), [.. OneSet, "?Held-1-1-3"])), PaperSheet.Page("b.jpg", PaperSheet.Form(PaperSheet.Code(Alba.Id), OneSet)) };
        var dry = await TakeAsync(test.Store, pile, new IntakeOptions { IsDryRun = true });
        Assert.Equal([4, 0], dry.Select(p => p.Forms[0].Added.Count));
        Assert.Equal(["Held-1-1-3"], dry[0].Forms[0].Crops.Select(c => c.PictureKey));
        Assert.Equal(0, await EntryCountAsync(test.Store));
        Assert.Empty(await test.Store.ListScansAsync(SchoolId, null));
    }

    [Fact]
    public async Task Take_PagesWithoutACode_AreTriedAsThePilesForms()
    {
        await using var test = await StoreAsync();
        // It comes first, when nothing is known yet, and is therefore read again at the end.
        var taken = await TakeAsync(test.Store, [PaperSheet.Page("a.jpg", PaperSheet.Form(null, OneSet)), PaperSheet.Page("b.jpg", PaperSheet.Form(PaperSheet.Code(Bruno.Id), OneSet))]);
        Assert.Equal(["b.jpg", "a.jpg"], taken.Select(p => p.File));
        var scan = taken[1].Forms[0].Scan;
        Assert.Equal((ScanState.Waiting, LessonId, null, ScanRemarkKind.NoCode), (scan.State, scan.LessonId, scan.PupilId, Assert.Single(scan.Remarks).Kind));
        Assert.Empty(taken[1].Forms[0].Added);
    }

    [Fact]
    public async Task Take_PagesThatBelongElsewhere_AreSaidAndNotKept()
    {
        await using var test = await StoreAsync();
        var other = Taught.Lesson with { Id = Id(500), Date = new DateOnly(2026, 3, 9) };
        await test.Store.SaveLessonAsync(other);
        var otherSchool = PaperSheet.Form(PaperSheet.Code(Alba.Id)) with { CodeFound = CodeFound.OtherSchool, Code = null, LayoutTag = null, Layout = null };
        var pages = new[]
        {
            PaperSheet.Page("a.jpg", PaperSheet.Form(PaperSheet.Code(Alba.Id), OneSet)),
            PaperSheet.Page("b.jpg", otherSchool),
            PaperSheet.Page("c.jpg", PaperSheet.Form(PaperSheet.Code(Alba.Id) with { LessonTag = 1 }, OneSet)),
            PaperSheet.Page("d.jpg", PaperSheet.Form(PaperSheet.Code(Id(999)), OneSet)),
        };
        var taken = await TakeAsync(test.Store, pages, new IntakeOptions { LessonId = other.Id });
        Assert.Equal(ScanRemarkKind.OtherLesson, taken[0].Forms[0].Scan.Remarks[0].Kind);
        Assert.Contains("7B", taken[0].Forms[0].Scan.Remarks[0].Sentence(System.Globalization.CultureInfo.GetCultureInfo("en")));
        taken = await TakeAsync(test.Store, pages[1..]);
        Assert.Equal([ScanRemarkKind.OtherSchool, ScanRemarkKind.LessonUnknown, ScanRemarkKind.PupilUnknown], taken.Select(p => p.Forms[0].Scan.Remarks[0].Kind));
        Assert.Equal(0, await EntryCountAsync(test.Store));
        Assert.Empty(await test.Store.ListScansAsync(SchoolId, null));
    }

    [Fact]
    public async Task Take_AfterTheLessonGotAnotherSheet_TakesNothingForThatOne()
    {
        await using var test = await StoreAsync();
        var other = Id(477);
        await test.Store.SaveSheetAsync(new Sheet { SchoolId = SchoolId, Id = other, Name = "Others", Draft = Towers });
        await test.Store.FreezeSheetAsync(SchoolId, other);
        await test.Store.SaveLessonAsync(Taught.Lesson with { SheetId = other });
        var taken = await TakeAsync(test.Store, [PaperSheet.Page("a.jpg", PaperSheet.Form(PaperSheet.Code(Alba.Id), OneSet))]);
        Assert.Equal(ScanRemarkKind.LessonUnknown, taken[0].Forms[0].Scan.Remarks[0].Kind);
        Assert.Equal(0, await EntryCountAsync(test.Store));
    }

    [Fact]
    public async Task Take_AFaultyPhotoThenAGoodOne_TakesTheGoodOne()
    {
        await using var test = await StoreAsync();
        var good = PaperSheet.Form(PaperSheet.Code(Alba.Id), OneSet);
        var blurred = good with { Reading = new FormReading(PageFault.Blurred, [], null) };
        var first = await TakeAsync(test.Store, [PaperSheet.Page("a.jpg", blurred)]);
        Assert.Equal((ScanState.Waiting, ScanRemarkKind.FormBlurred), (first[0].Forms[0].Scan.State, first[0].Forms[0].Scan.Remarks[0].Kind));
        var second = await TakeAsync(test.Store, [PaperSheet.Page("b.jpg", good)]);
        Assert.Equal((4, first[0].Forms[0].Scan.Id), (second[0].Forms[0].Added.Count, second[0].Forms[0].Scan.Id));
        var third = await TakeAsync(test.Store, [PaperSheet.Page("c.jpg", blurred)]);
        Assert.Equal(ScanState.Done, third[0].Forms[0].Scan.State);
        Assert.Equal("b.jpg", Assert.Single(await test.Store.ListScansAsync(SchoolId, LessonId)).File);
    }

    [Fact]
    public async Task Take_AProblem_LeavesTheRestAlone()
    {
        await using var test = await StoreAsync();
        var taken = await TakeAsync(test.Store,
            [new ReadPage("a.jpg", 1, new ScanRemark(ScanRemarkKind.FileDamaged), [], null, default), PaperSheet.Page("b.jpg", PaperSheet.Form(PaperSheet.Code(Alba.Id), OneSet))]);
        Assert.Equal([ScanRemarkKind.FileDamaged, null], taken.Select(p => p.Problem?.Kind));
        Assert.Equal(4, await EntryCountAsync(test.Store));
    }

    [Theory, EachDatabase]
    public async Task Review_FromPhotoToEntries_KeepsThePiecesAndForgetsThePhoto(Database database)
    {
        await using var test = await StoreAsync(database);
        var store = test.Store;
        var page = PaperSheet.Page("a.jpg", PaperSheet.Form(PaperSheet.Code(Alba.Id), [.. OneSet, "?Held-1-1-3", "Level-1-1-4"]));
        ((PaperSheet.BlankPicture)page.Picture!).WrittenAtMm.UnionWith([200, 250]);
        await TakeAsync(store, [page]);
        // What waits outlives the program.
        var review = new ScanReview(await test.OpenAgainAsync(), SchoolId, Clock);
        var scan = Assert.Single(await review.WaitingAsync(LessonId));
        Assert.Equal(["Level-1-1-0", "Held-1-1-3"], scan.Waiting.Select(i => i.Key));
        Assert.Equal([1, 2, 3], await review.PictureAsync(scan.Id, ScanPicture.Photo));
        Assert.NotNull(await review.PictureAsync(scan.Id, "Held-1-1-3"));

        await Assert.ThrowsAsync<ArgumentException>(() => review.AnswerAsync(scan.Id, "Level-1-1-0", 7));
        await Assert.ThrowsAsync<ArgumentException>(() => review.AnswerAsync(scan.Id, "Level-9-9-0", 1));
        var first = await review.AnswerAsync(scan.Id, "Level-1-1-0", 4);
        Assert.Equal(new Choice(BalanceLevels[3].Id), Assert.Single(first.Added).Fact);
        Assert.Equal(ScanState.Waiting, first.Scan.State);
        var last = await review.AnswerAsync(scan.Id, "Held-1-1-3", 0);
        Assert.Equal((ScanState.Done, new Trial(false)), (last.Scan.State, Assert.Single(last.Added).Fact));

        Assert.Empty(await review.WaitingAsync());
        // The page is gone; only the boxes of seconds are left, which nobody has typed.
        Assert.All(await store.ListScanPicturesAsync(SchoolId, scan.Id), p => Assert.StartsWith("Seconds-", p.PictureKey));
        var kept = await store.ListPicturesAsync(SchoolId, LessonId);
        Assert.Equal(["Held-1-1-3", "Level-1-1-0", "OwnWords-0-0-0"], kept.Select(k => k.FieldKey));
        // An entry leads to its piece.
        Assert.Contains(PictureKey.Of(last.Added[0], Towers)!, kept);
        Assert.NotNull(await store.FindPictureAsync(SchoolId, kept[0]));
        // The same pile again asks nothing and adds nothing.
        Assert.Empty((await TakeAsync(store, [page]))[0].Forms[0].Added);
        Assert.Empty(await review.WaitingAsync());
    }

    [Theory]
    [InlineData(false, false, 0, 0)]
    [InlineData(true, false, 1, 0)]
    [InlineData(false, true, 0, 1)]
    public async Task Take_WhatTheSchoolKeeps_IsKeptAndNothingElse(bool words, bool photos, int keptCount, int photoCount)
    {
        await using var test = await StoreAsync(keeping: new PictureKeeping { KeepsWords = words, KeepsPhotos = photos });
        var page = PaperSheet.Page("a.jpg", PaperSheet.Form(PaperSheet.Code(Alba.Id), OneSet));
        ((PaperSheet.BlankPicture)page.Picture!).WrittenAtMm.Add(250);
        var scan = (await TakeAsync(test.Store, [page]))[0].Forms[0].Scan;
        Assert.Equal(keptCount, (await test.Store.ListPicturesAsync(SchoolId, LessonId)).Count);
        Assert.Equal(photoCount, (await test.Store.ListScanPicturesAsync(SchoolId, scan.Id)).Count);
    }

    [Fact]
    public async Task Assign_ASpareSheet_EntersItForThatPupil()
    {
        await using var test = await StoreAsync();
        await TakeAsync(test.Store, [PaperSheet.Page("a.jpg", PaperSheet.Form(PaperSheet.Spare(3), OneSet))]);
        var review = new ScanReview(test.Store, SchoolId, Clock);
        var scan = Assert.Single(await review.WaitingAsync());
        Assert.Equal((3, 0), (scan.SpareNumber, await EntryCountAsync(test.Store)));
        await Assert.ThrowsAsync<ArgumentException>(() => review.AssignAsync(scan.Id, Id(99)));
        var assigned = await review.AssignAsync(scan.Id, Carys.Id);
        Assert.Equal(ScanState.Done, assigned.Scan.State);
        Assert.All(assigned.Added, e => Assert.Equal(Carys.Id, e.PupilId));
        Assert.Equal(4, assigned.Added.Count);
    }

    [Fact]
    public async Task TakeBack_AnAnswer_WithdrawsItsEntryAndAsksAgain()
    {
        await using var test = await StoreAsync();
        await TakeAsync(test.Store, [PaperSheet.Page("a.jpg", PaperSheet.Form(PaperSheet.Code(Alba.Id), [.. OneSet, "?Held-1-1-3", "?Held-1-1-4"]))]);
        var review = new ScanReview(test.Store, SchoolId, Clock);
        var scan = Assert.Single(await review.WaitingAsync());
        await review.AnswerAsync(scan.Id, "Held-1-1-3", 1);
        var back = await review.TakeBackAsync(scan.Id, "Held-1-1-3");
        Assert.IsType<Withdrawal>(Assert.Single(back.Added).Fact);
        Assert.Equal(["Held-1-1-3", "Held-1-1-4"], back.Scan.Waiting.Select(i => i.Key));
        Assert.DoesNotContain(EntryLog.Current(await test.Store.ListEntriesAsync(SchoolId, LessonId)), e => e.TrialNumber == 3);
        // And the other way: what was taken back can be said anew.
        Assert.Equal(new Trial(true), Assert.Single((await review.AnswerAsync(scan.Id, "Held-1-1-3", 1)).Added).Fact);
    }

    [Fact]
    public async Task TakeBack_ACorrection_LetsWhatWasTypedHoldAgain()
    {
        await using var test = await StoreAsync();
        await test.Store.AppendEntriesAsync(SchoolId, [RecorderOf(Taught, EntrySource.Desk).Put(Alba.Id, BalanceId, 1, null, new Prediction(5))!]);
        await TakeAsync(test.Store, [PaperSheet.Page("a.jpg", PaperSheet.Form(PaperSheet.Code(Alba.Id), OneSet))]);
        var review = new ScanReview(test.Store, SchoolId, Clock);
        var scan = Assert.Single(await review.WaitingAsync());
        foreach (var answer in new[] { 3, 5 })
        {
            Assert.Equal(ScanState.Done, (await review.AnswerAsync(scan.Id, "Predicted-1-1-0", answer)).Scan.State);
            Assert.Equal(new Prediction(answer), await PredictedAsync());
            var back = await review.TakeBackAsync(scan.Id, "Predicted-1-1-0");
            Assert.Equal((ScanState.Waiting, 5m), (back.Scan.State, Assert.Single(back.Scan.Waiting).Before));
            Assert.Equal(new Prediction(5), await PredictedAsync());
        }

        async Task<EntryFact> PredictedAsync() => EntryLog.Current(await test.Store.ListEntriesAsync(SchoolId, LessonId)).Single(e => e.Fact is Prediction).Fact;
    }

    [Fact]
    public async Task Assign_APupilOfAnotherClass_StaysAssignedWhenReadAgain()
    {
        await using var test = await StoreAsync();
        var stranger = Alba with { Id = Id(77), Code = "Z9" };
        await test.Store.SaveRosterAsync(SchoolId, new RosterSave { Pupils = [stranger] });
        var page = PaperSheet.Page("a.jpg", PaperSheet.Form(PaperSheet.Code(stranger.Id), OneSet));
        await TakeAsync(test.Store, [page]);
        var review = new ScanReview(test.Store, SchoolId, Clock);
        var scan = Assert.Single(await review.WaitingAsync());
        Assert.Equal(ScanRemarkKind.NotInClass, scan.Remarks[0].Kind);
        Assert.Equal(4, (await review.AssignAsync(scan.Id, Bruno.Id)).Added.Count);
        Assert.Empty((await TakeAsync(test.Store, [page]))[0].Forms[0].Added);
        Assert.Empty(await review.WaitingAsync());
    }

    [Fact]
    public async Task Discard_APage_KeepsNoPictureAndStaysAway()
    {
        await using var test = await StoreAsync();
        var page = PaperSheet.Page("a.jpg", PaperSheet.Form(PaperSheet.Spare(3), OneSet));
        await TakeAsync(test.Store, [page]);
        var review = new ScanReview(test.Store, SchoolId, Clock);
        var scan = Assert.Single(await review.WaitingAsync());
        await review.DiscardAsync(scan.Id);
        Assert.Empty(await test.Store.ListScanPicturesAsync(SchoolId, scan.Id));
        await TakeAsync(test.Store, [page]);
        Assert.Empty(await review.WaitingAsync());
    }

    [Fact]
    public async Task Take_SecondsByHand_TheirBoxStaysUntilSomebodyTypedThem()
    {
        await using var test = await StoreAsync();
        var page = PaperSheet.Page("a.jpg", PaperSheet.Form(PaperSheet.Code(Alba.Id), OneSet));
        // Every box for seconds lies at 200 mm.
        ((PaperSheet.BlankPicture)page.Picture!).WrittenAtMm.Add(200);
        var scan = Assert.Single(Assert.Single(await TakeAsync(test.Store, [page])).Forms).Scan;
        Assert.Equal(ScanState.Done, scan.State);
        List<string> seconds = [.. scan.Items.Where(i => i.Doubt == ScanDoubt.ByHand).Select(i => i.Key).Order(StringComparer.Ordinal)];
        Assert.NotEmpty(seconds);
        Assert.Equal(seconds, (await test.Store.ListScanPicturesAsync(SchoolId, scan.Id)).Select(p => p.PictureKey));

        await new ScanReview(test.Store, SchoolId, TimeProvider.System).AnswerAsync(scan.Id, seconds[0], 2.5m);
        Assert.Equal(seconds[1..], (await test.Store.ListScanPicturesAsync(SchoolId, scan.Id)).Select(p => p.PictureKey));
        Assert.NotNull(await test.Store.FindPictureAsync(SchoolId, new PictureKey(LessonId, Alba.Id, seconds[0])));
    }
}
