using Slantwise.Records.Safety;

namespace Slantwise.Records.Tests.Safety;

public sealed class IncidentCheckTests
{
    private static readonly DateOnly Today = new(2027, 3, 8);
    private static readonly Incident Fine = RiskLesson.Incident(null, Today, new string('a', 1000), new string('b', 1000)) with
    {
        MinuteOfDay = 1439, Place = new string('p', 120), Done = new string('d', 1000),
    };

    [Fact]
    public void Of_EverythingAtItsLimit_IsFine() => Assert.Empty(IncidentCheck.Of(Fine, Today));

    [Fact]
    public void Of_WhatCannotBe_IsRefusedInTheOrderOfTheForm()
    {
        var wrong = Fine with
        {
            Kind = 0, Day = Today.AddDays(1), MinuteOfDay = 1440, Place = new string('p', 121), Happened = " ", Done = new string('d', 1001), Changed = new string('c', 1001),
        };
        Assert.Equal(
            ["IncidentKindUnknown", "IncidentAhead", "IncidentTimeUnknown", "IncidentPlaceTooLong", "IncidentSaysNothing", "IncidentDoneTooLong", "IncidentChangedTooLong"],
            IncidentCheck.Of(wrong, Today).Select(f => f.Key));
        Assert.Equal("IncidentHappenedTooLong", Assert.Single(IncidentCheck.Of(Fine with { Happened = new string('h', 1001) }, Today)).Key);
        Assert.All(IncidentCheck.Of(wrong, Today), f => Assert.NotEmpty(f.Sentence(RiskLesson.Spanish)));
    }
}
