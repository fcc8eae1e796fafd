using CsCheck;
using Slantwise.Records.Scans;

namespace Slantwise.Records.Tests.Scans;

public sealed class SheetFieldTests
{
    [Fact]
    public void FromKey_WhatKeyMakes_IsTheField() => Gen.Select(Gen.Enum<SheetFieldKind>(), Gen.Int[0, 99], Gen.Int[0, 99], Gen.Int[0, 999]).Sample((kind, task, set, number) =>
    {
        var field = new SheetField(kind, task, set, number);
        Assert.Equal(field, SheetField.FromKey(field.Key));
    });

    [Theory]
    [InlineData("")]
    [InlineData("Held-1-2")]
    [InlineData("Held-1-2-3-4")]
    [InlineData("held-1-2-3")]
    [InlineData("3-1-2-3")]
    [InlineData("Held-01-2-3")]
    [InlineData("Held--1-2-3")]
    public void FromKey_WhatKeyNeverMakes_IsNone(string key) => Assert.Null(SheetField.FromKey(key));

    [Theory]
    [InlineData(SheetFieldKind.Held, SheetFieldKind.NotYet)]
    [InlineData(SheetFieldKind.TeacherMet, SheetFieldKind.TeacherNotMet)]
    public void Group_OfAPair_IsOneForTheTwo(SheetFieldKind one, SheetFieldKind other)
    {
        Assert.Equal(new SheetField(one, 1, 2, 3).Group, new SheetField(other, 1, 2, 3).Group);
        Assert.NotEqual(new SheetField(one, 1, 2, 3).Group, new SheetField(one, 1, 2, 4).Group);
    }

    [Theory]
    [InlineData(SheetFieldKind.Level)]
    [InlineData(SheetFieldKind.Predicted)]
    [InlineData(SheetFieldKind.Next)]
    [InlineData(SheetFieldKind.TeacherSet)]
    public void Group_OfAChoice_IsOneForAllNumbers(SheetFieldKind kind) => Assert.Equal(new SheetField(kind, 1, 2, 3).Group, new SheetField(kind, 1, 2, 4).Group);

    [Fact]
    public void Group_OfACue_IsEmpty() => Assert.Equal("", new SheetField(SheetFieldKind.Cue, 1, 2, 3).Group);
}
