using CsCheck;
using Slantwise.Records.Scans;

namespace Slantwise.Records.Tests.Scans;

public sealed class SheetCodeTests
{
    private static readonly Guid School = new("01990000-0000-7000-8000-0000000000a1");
    private static readonly Gen<long> AnyTag = Gen.Long[0, (1L << 40) - 1];

    private static readonly Gen<SheetCode> AnyCode = Gen.Select(AnyTag, AnyTag, Gen.Bool, Gen.Int[1, ushort.MaxValue], Gen.Int[1, 255], AnyTag,
        (lesson, pupil, isNamed, version, page, layout) => new SheetCode(lesson, pupil, isNamed, version, page, layout));

    [Fact]
    public void Read_WhatWasWritten_IsTheCode() => AnyCode.Sample(code =>
    {
        var text = code.Write(School);
        Assert.Equal(35, text.Length);
        Assert.Equal(code, SheetCode.Read(text, School));
    });

    [Fact]
    public void Read_AnotherSchoolsOrADamagedOne_IsNone() => Gen.Select(AnyCode, Gen.Int[0, 34], Gen.Char["0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:"]).Sample((code, at, letter) =>
    {
        var text = code.Write(School);
        Assert.Null(SheetCode.Read(text, Guid.Empty));
        var damaged = text[..at] + letter + text[(at + 1)..];
        if (damaged != text) Assert.Null(SheetCode.Read(damaged, School));
    });

    [Theory]
    [InlineData("")]
    [InlineData("https://example.org/")]
    [InlineData("BB8")]
    public void Read_AnotherText_IsNone(string text) => Assert.Null(SheetCode.Read(text, School));

    [Theory]
    [InlineData(0, 1)]
    [InlineData(65_536, 1)]
    [InlineData(1, 0)]
    [InlineData(1, 256)]
    public void Write_OutOfRange_Throws(int version, int page) =>
        Assert.Throws<InvalidOperationException>(() => new SheetCode(1, 1, true, version, page, 1).Write(School));
}
