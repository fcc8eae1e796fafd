using System.Buffers.Text;
using System.Security.Cryptography;
using Microsoft.AspNetCore.DataProtection;
using Slantwise.Records.Floor;

namespace Slantwise.Desk.Pages.Floor;

/// <summary>Signs what a link carries, so that whoever opens it joins without a code: the teacher's phone, the projector.</summary>
/// <param name="protection">The program's keys.</param>
/// <param name="clock">Dates the tickets.</param>
public sealed class FloorTickets(IDataProtectionProvider protection, TimeProvider clock)
{
    private const int ByteCount = 33;

    private readonly ITimeLimitedDataProtector _protector = protection.CreateProtector("Slantwise.Floor.Ticket").ToTimeLimitedDataProtector();

    /// <summary>How long a ticket holds: whoever sees the teacher's over a shoulder could join as the teacher, so that one is short.</summary>
    /// <param name="kind">What it joins a device as.</param>
    public static TimeSpan LastsFor(FloorDeviceKind kind) =>
        kind is FloorDeviceKind.Teacher or FloorDeviceKind.Board ? TimeSpan.FromMinutes(15) : FloorHub.CodeLasts;

    /// <summary>A ticket, in characters that an address may hold.</summary>
    /// <param name="schoolId">The owning school.</param>
    /// <param name="lessonId">The lesson.</param>
    /// <param name="kind">What it joins a device as.</param>
    public string Of(Guid schoolId, Guid lessonId, FloorDeviceKind kind)
    {
        var bytes = new byte[ByteCount];
        schoolId.TryWriteBytes(bytes);
        lessonId.TryWriteBytes(bytes.AsSpan(16));
        bytes[32] = (byte)kind;
        return Base64Url.EncodeToString(_protector.Protect(bytes, clock.GetUtcNow() + LastsFor(kind)));
    }

    /// <summary>What a ticket says; none for a text that is no ticket of ours, or one that has run out.</summary>
    /// <param name="ticket">The text of a link.</param>
    public FloorTicket? Read(string ticket)
    {
        try
        {
            var bytes = _protector.Unprotect(Base64Url.DecodeFromChars(ticket));
            return bytes.Length != ByteCount || !Enum.IsDefined((FloorDeviceKind)bytes[32])
                ? null
                : new FloorTicket(new Guid(bytes.AsSpan(0, 16)), new Guid(bytes.AsSpan(16, 16)), (FloorDeviceKind)bytes[32]);
        }
        catch (Exception failure) when (failure is CryptographicException or FormatException)
        {
            return null;
        }
    }
}
