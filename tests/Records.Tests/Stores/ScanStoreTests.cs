using Slantwise.Records.Scans;
using Slantwise.Records.Scans.Intake;
using Slantwise.Records.Scans.Pictures;
using static Slantwise.Records.Tests.Stores.RoundTripTests;

namespace Slantwise.Records.Tests.Stores;

public sealed class ScanStoreTests
{
    private static Scan ScanOf(SampleSchool sample, int number = 1, int? pupil = 0) => new()
    {
        SchoolId = sample.Id, Id = SampleSchool.IdOf(70_000 + number), File = "IMG_1.jpg", FilePage = 2, FormNumber = 1, PictureTag = 12_345_678_901,
        ReadAt = new DateTimeOffset(2026, 9, 14, 10, number, 0, TimeSpan.Zero), CodeFound = CodeFound.Read, LessonId = sample.Lesson.Id,
        PupilId = pupil is { } p ? sample.Pupils[p].Id : null, SheetVersion = 1, SheetPage = 1, LayoutTag = 9,
        Remarks = [new ScanRemark(ScanRemarkKind.OldVersion, "1", "2")], Writings = ["OwnWords-0-0-0"],
        Items =
        [
            new ScanItem { Question = new SheetField(SheetFieldKind.Level, 1, 1), Fields = [new("Level-1-1-2", Engines.Marks.MarkVerdict.Marked, 0.99)], Value = 2, Doubt = ScanDoubt.Differs, Before = 1 },
            new ScanItem { Question = new SheetField(SheetFieldKind.Seconds, 1, 1, 1), Doubt = ScanDoubt.ByHand, Answer = new ScanAnswer(4.2m, new DateTimeOffset(2026, 9, 14, 11, 0, 0, TimeSpan.Zero)) },
        ],
    };

    private static byte[] Bytes(int length) => [.. Enumerable.Range(0, length).Select(i => (byte)(i * 7))];

    [Theory, EachDatabase]
    public async Task SaveScan_WithPictures_ComesBackEqual(Database database)
    {
        var (test, sample) = await TestStore.OpenSampleAsync(database);
        await using var _ = test;
        var store = test.Store;
        var scan = ScanOf(sample);
        ScanPicture[] pictures = [new(sample.Id, scan.Id, "Level-1-1-0", Bytes(300)), new(sample.Id, scan.Id, ScanPicture.Photo, Bytes(70_000))];
        await store.SaveScanAsync(new ScanSave(scan) { Pictures = pictures });

        AssertSame([scan], await store.ListScansAsync(sample.Id, sample.Lesson.Id));
        AssertSame([scan], await store.ListScansAsync(sample.Id, null));
        AssertSame(scan, await store.FindScanAsync(sample.Id, scan.Id));
        Assert.Equal(["Level-1-1-0", "Photo"], (await store.ListScanPicturesAsync(sample.Id, scan.Id)).Select(p => p.PictureKey));
        Assert.Equal(Bytes(70_000), await store.FindScanPictureAsync(sample.Id, scan.Id, ScanPicture.Photo));
        Assert.Null(await store.FindScanPictureAsync(sample.Id, scan.Id, "Level-1-2-0"));
        Assert.Null(await store.FindScanAsync(sample.Id, SampleSchool.IdOf(1)));
    }

    [Theory, EachDatabase]
    public async Task SaveScan_Done_MovesItsPiecesAndForgetsTheRest(Database database)
    {
        var (test, sample) = await TestStore.OpenSampleAsync(database);
        await using var _ = test;
        var store = test.Store;
        var scan = ScanOf(sample);
        await store.SaveScanAsync(new ScanSave(scan) { Pictures = [new(sample.Id, scan.Id, "Photo", Bytes(9))] });
        var key = new PictureKey(sample.Lesson.Id, sample.Pupils[0].Id, "Level-1-1-0");
        var save = new ScanSave(scan with { State = ScanState.Done }) { Kept = [new(sample.Id, key.LessonId, key.PupilId, key.FieldKey, Bytes(5))], ForgetsPictures = true };
        await store.SaveScanAsync(save);
        await store.SaveScanAsync(save);

        Assert.Empty(await store.ListScanPicturesAsync(sample.Id, scan.Id));
        Assert.Equal([key], await store.ListPicturesAsync(sample.Id, sample.Lesson.Id));
        Assert.Equal(Bytes(5), await store.FindPictureAsync(sample.Id, key));
        Assert.Equal(ScanState.Done, (await store.FindScanAsync(sample.Id, scan.Id))!.State);
        await store.RemovePicturesAsync(sample.Id, sample.Lesson.Id, key.PupilId);
        Assert.Null(await store.FindPictureAsync(sample.Id, key));
    }

    [Theory, EachDatabase]
    public async Task SaveScan_OfStrangers_IsRefusedWhole(Database database)
    {
        var (test, sample) = await TestStore.OpenSampleAsync(database);
        await using var _ = test;
        var store = test.Store;
        var scan = ScanOf(sample);
        await Assert.ThrowsAsync<ArgumentException>(() => store.SaveScanAsync(new ScanSave(scan with { PupilId = SampleSchool.IdOf(5) })));
        await Assert.ThrowsAsync<ArgumentException>(() => store.SaveScanAsync(new ScanSave(scan with { LessonId = SampleSchool.IdOf(5) })));
        await Assert.ThrowsAsync<ArgumentException>(() => store.SaveScanAsync(new ScanSave(scan) { Pictures = [new(sample.Id, SampleSchool.IdOf(5), "Photo", [1])] }));
        await Assert.ThrowsAsync<ArgumentException>(() => store.SaveScanAsync(new ScanSave(scan) { Kept = [new(sample.Id, sample.Lesson.Id, SampleSchool.IdOf(5), "Level-1-1-0", [1])] }));
        Assert.Empty(await store.ListScansAsync(sample.Id, null));
    }

    [Theory, EachDatabase]
    public async Task ErasePupil_WithScansAndPictures_LeavesNoneOfThePupil(Database database)
    {
        var (test, sample) = await TestStore.OpenSampleAsync(database);
        await using var _ = test;
        var store = test.Store;
        var (own, other, observed) = (ScanOf(sample, 1, 0), ScanOf(sample, 2, 1), ObservedOf(sample));
        foreach (var scan in new[] { own, other })
        {
            await store.SaveScanAsync(new ScanSave(scan)
            {
                Pictures = [new(sample.Id, scan.Id, "Photo", Bytes(9))],
                Kept = [new(sample.Id, sample.Lesson.Id, scan.PupilId!.Value, "OwnWords-0-0-0", Bytes(5))],
            });
        }
        await store.SaveScanAsync(new ScanSave(observed)
        {
            Pictures = [new(sample.Id, observed.Id, "Photo", Bytes(9)), new(sample.Id, observed.Id, "TeacherMet-1-1-1", Bytes(3)), new(sample.Id, observed.Id, "TeacherMet-1-2-1", Bytes(4))],
        });

        await store.ErasePupilAsync(sample.Id, sample.Pupils[0].Id);

        Assert.Equal([other.Id, observed.Id], (await store.ListScansAsync(sample.Id, null)).Select(s => s.Id));
        Assert.Empty(await store.ListScanPicturesAsync(sample.Id, own.Id));
        Assert.Single(await store.ListScanPicturesAsync(sample.Id, other.Id));
        Assert.Equal([sample.Pupils[1].Id], (await store.ListPicturesAsync(sample.Id, sample.Lesson.Id)).Select(k => k.PupilId));
        // Of the teacher's sheet about both, the other's row is left, and no picture that shows the erased one's.
        var left = (await store.FindScanAsync(sample.Id, observed.Id))!;
        Assert.Equal([Guid.Empty, sample.Pupils[1].Id], left.RowPupils);
        Assert.Equal(["TeacherMet-1-2-1"], left.Items.Select(i => i.Key));
        Assert.Equal(["TeacherMet-1-2-1"], (await store.ListScanPicturesAsync(sample.Id, observed.Id)).Select(p => p.PictureKey));
    }

    [Theory, EachDatabase]
    public async Task SaveScan_InTwoSchoolsWithTheSameIds_StaysApart(Database database)
    {
        await using var test = await TestStore.OpenAsync(database);
        var (ours, theirs) = (new SampleSchool(number: 1), new SampleSchool(number: 2));
        foreach (var sample in new[] { ours, theirs })
        {
            await sample.SaveToAsync(test.Store);
            var scan = ScanOf(sample) with { File = sample.School.Name };
            await test.Store.SaveScanAsync(new ScanSave(scan)
            {
                Pictures = [new(sample.Id, scan.Id, "Photo", Bytes(9))], Kept = [new(sample.Id, sample.Lesson.Id, sample.Pupils[0].Id, "OwnWords-0-0-0", Bytes(5))],
            });
        }
        await test.Store.ErasePupilAsync(ours.Id, ours.Pupils[0].Id);
        Assert.Empty(await test.Store.ListScansAsync(ours.Id, null));
        Assert.Empty(await test.Store.ListPicturesAsync(ours.Id, ours.Lesson.Id));
        var left = Assert.Single(await test.Store.ListScansAsync(theirs.Id, null));
        Assert.Equal("School 2", left.File);
        Assert.Single(await test.Store.ListScanPicturesAsync(theirs.Id, left.Id));
        Assert.Single(await test.Store.ListPicturesAsync(theirs.Id, theirs.Lesson.Id));
    }

    [Theory, EachDatabase]
    public async Task Restore_ABackup_BringsBackScansAndPictures(Database database)
    {
        var (test, sample) = await TestStore.OpenSampleAsync(database);
        await using var _ = test;
        var store = test.Store;
        var scan = ScanOf(sample);
        await store.SaveScanAsync(new ScanSave(scan)
        {
            Pictures = [new(sample.Id, scan.Id, "Photo", Bytes(9))], Kept = [new(sample.Id, sample.Lesson.Id, sample.Pupils[0].Id, "OwnWords-0-0-0", Bytes(5))],
        });
        await store.BackupAsync(test.PathOf("a.backup"));
        await store.ErasePupilAsync(sample.Id, sample.Pupils[0].Id);
        await store.RestoreAsync(test.PathOf("a.backup"));
        AssertSame([scan], await store.ListScansAsync(sample.Id, null));
        Assert.Equal(Bytes(9), await store.FindScanPictureAsync(sample.Id, scan.Id, "Photo"));
        Assert.Single(await store.ListPicturesAsync(sample.Id, sample.Lesson.Id));
    }

    [Theory, EachDatabase]
    public async Task SaveSchool_WhatPicturesItKeeps_ComesBack(Database database)
    {
        var (test, sample) = await TestStore.OpenSampleAsync(database);
        await using var _ = test;
        Assert.Equal(new PictureKeeping { KeepsWords = true, KeepsPhotos = false }, (await test.Store.FindSchoolAsync(sample.Id))!.Pictures);
        var other = new PictureKeeping { KeepsWords = false, KeepsPhotos = true };
        await test.Store.SaveSchoolAsync(sample.School with { Pictures = other });
        Assert.Equal(other, (await test.Store.FindSchoolAsync(sample.Id))!.Pictures);
    }

    private static Scan ObservedOf(SampleSchool sample) => ScanOf(sample, 3, null) with
    {
        IsObservation = true, RowPupils = [sample.Pupils[0].Id, sample.Pupils[1].Id],
        Items = [new ScanItem { Question = new SheetField(SheetFieldKind.TeacherMet, 1, 1, 1), Value = 1 }, new ScanItem { Question = new SheetField(SheetFieldKind.TeacherMet, 1, 2, 1), Value = 0 }],
    };
}
