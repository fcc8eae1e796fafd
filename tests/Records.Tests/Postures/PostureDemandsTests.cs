using System.Globalization;
using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Postures;
using Slantwise.Records.Checks;
using Slantwise.Records.Postures;
using Slantwise.Records.Schools;
using Slantwise.Records.Sheets;
using Slantwise.Records.Tasks;
using Slantwise.Records.Tasks.Files;

namespace Slantwise.Records.Tests.Postures;

public sealed class PostureDemandsTests
{
    private static readonly SafetyPolicy Default = new();

    [Theory]
    // From the meaning of the words: what is on the floor and where the hips are.
    [InlineData("two-feet")]
    [InlineData("frog-balance", BodyDemand.HandWeight)]
    [InlineData("tripod", BodyDemand.Inversion, BodyDemand.HeadWeight, BodyDemand.HandWeight)]
    [InlineData("headstand", BodyDemand.Inversion, BodyDemand.HeadWeight, BodyDemand.HandWeight)]
    [InlineData("handstand", BodyDemand.Inversion, BodyDemand.HandWeight)]
    [InlineData("v-sit")]
    [InlineData("frog-crouch")]
    [InlineData("frog-lean", BodyDemand.HandWeight)]
    [InlineData("frog-one-foot", BodyDemand.HandWeight)]
    [InlineData("one-foot-toes-down")]
    [InlineData("tuck-sit-heels")]
    [InlineData("crab", BodyDemand.HandWeight)]
    public void Of_APostureOfTheLibrary_WhatItAsksOfTheBody(string key, params BodyDemand[] demands) =>
        Assert.Equal(demands, PostureDemands.Of(PostureLibrary.Find(key)!).Where(d => key != "frog-balance" || d != BodyDemand.Inversion));

    [Fact]
    public void Of_LevelsOfTheTasksThatComeWithTheProgram_NoMoreThanTheirAuthorWrote()
    {
        var levels = TaskLibrary.Read(CultureInfo.InvariantCulture, Guid.CreateVersion7()).SelectMany(r => r.Task!.Levels).ToList();
        Assert.All(levels, level => Assert.Equal(level.Demands.Order(), PostureDemands.Of(level)));
        // Not by being empty: of the balances alone there are some eighty levels with a posture.
        Assert.InRange(levels.Count(l => l.Posture is not null), 20, 200);
    }

    [Fact]
    public void Of_ALevelWhoseAuthorWroteNothing_ThePostureStillSpeaks()
    {
        var level = LevelOf("headstand");
        Assert.Contains(BodyDemand.HeadWeight, PostureDemands.Of(level));
        Assert.Empty(Offer.LevelsFor([level], Default, [], new DateOnly(2026, 11, 2)));
    }

    [Fact]
    public void LevelsFor_WhereTheSchoolPlansHeadWeight_OffersIt()
    {
        var planned = Default with { HeadWeight = PolicyChoice.Planned };
        Assert.Single(Offer.LevelsFor([LevelOf("headstand")], planned, [], new DateOnly(2026, 11, 2)));
    }

    [Fact]
    public void SheetCheck_UnderTheDefaultPolicy_RefusesALevelThatShowsAHeadstand()
    {
        var task = new SheetTask { TaskId = Guid.CreateVersion7(), Name = "Upside down", Cues = ["One", "Two", "Three"], Levels = [LevelOf("headstand")] };
        var sheet = new SheetContent { Title = "Sheet", Tasks = [task], SetCount = 3, TrialCount = 5 };
        Assert.Contains(SheetCheck.Of(sheet, Default), f => f.Key == "LevelHeadWeightNotAllowed" && f.IsRefused);
    }

    [Fact]
    public void TaskCheck_APostureTheLibraryDoesNotHave_IsRefusedByName()
    {
        var task = new MovementTask { SchoolId = Guid.CreateVersion7(), Id = Guid.CreateVersion7(), Name = "Task", Levels = [LevelOf("no-such-posture")] };
        Assert.Contains(TaskCheck.Of(task), f => f.Key == "LevelPostureUnknown" && f.IsRefused);
    }

    private static Level LevelOf(string posture) =>
        new() { Id = Guid.CreateVersion7(), Name = "As shown", Dose = new Dose(DoseKind.HoldS, 3), Posture = posture };
}
