using System.Text;
using CsCheck;
using Slantwise.Records.Scans;

namespace Slantwise.Records.Tests.Scans;

public sealed class Base45Tests
{
    // Source: [RFC9285] 4.3 and 4.4.
    [Theory]
    [InlineData("AB", "BB8")]
    [InlineData("Hello!!", "%69 VD92EX0")]
    [InlineData("base-45", "UJCLQE7W581")]
    [InlineData("ietf!", "QED8WEX0")]
    public void Write_PublishedExamples_AreAsPublished(string text, string encoded)
    {
        Assert.Equal(encoded, Base45.Write(Encoding.ASCII.GetBytes(text)));
        Assert.Equal(text, Encoding.ASCII.GetString(Base45.Read(encoded)!));
    }

    // Source: [RFC9285] 6 for the first; the others by hand: 65 536, 256, a letter that is none, a letter too few.
    [Theory]
    [InlineData(":::")]
    [InlineData("GGW")]
    [InlineData("V5")]
    [InlineData("ab8")]
    [InlineData("BB8B")]
    public void Read_WhatNoBytesMake_IsNone(string text) => Assert.Null(Base45.Read(text));

    [Fact]
    public void Read_WhatWasWritten_IsTheBytes() => Gen.Byte.Array[0, 60].Sample(bytes => Assert.Equal(bytes, Base45.Read(Base45.Write(bytes))!));
}
