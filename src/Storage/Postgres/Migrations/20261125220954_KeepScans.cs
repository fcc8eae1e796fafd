using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Slantwise.Storage.Postgres.Migrations
{
    /// <inheritdoc />
    public partial class KeepScans : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<bool>(
                name: "keeps_photos",
                table: "schools",
                type: "boolean",
                nullable: false,
                defaultValue: false);

            migrationBuilder.AddColumn<bool>(
                name: "keeps_words",
                table: "schools",
                type: "boolean",
                nullable: false,
                defaultValue: true);

            migrationBuilder.CreateTable(
                name: "pictures",
                columns: table => new
                {
                    school_id = table.Column<Guid>(type: "uuid", nullable: false),
                    lesson_id = table.Column<Guid>(type: "uuid", nullable: false),
                    pupil_id = table.Column<Guid>(type: "uuid", nullable: false),
                    field_key = table.Column<string>(type: "text", nullable: false),
                    bytes = table.Column<byte[]>(type: "bytea", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_pictures", x => new { x.school_id, x.lesson_id, x.pupil_id, x.field_key });
                    table.ForeignKey(
                        name: "fk_pictures_lessons",
                        columns: x => new { x.school_id, x.lesson_id },
                        principalTable: "lessons",
                        principalColumns: new[] { "school_id", "id" },
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "fk_pictures_pupils",
                        columns: x => new { x.school_id, x.pupil_id },
                        principalTable: "pupils",
                        principalColumns: new[] { "school_id", "id" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "scans",
                columns: table => new
                {
                    school_id = table.Column<Guid>(type: "uuid", nullable: false),
                    id = table.Column<Guid>(type: "uuid", nullable: false),
                    lesson_id = table.Column<Guid>(type: "uuid", nullable: true),
                    pupil_id = table.Column<Guid>(type: "uuid", nullable: true),
                    state = table.Column<int>(type: "integer", nullable: false),
                    read_at = table.Column<long>(type: "bigint", nullable: false),
                    content = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_scans", x => new { x.school_id, x.id });
                    table.ForeignKey(
                        name: "fk_scans_lessons",
                        columns: x => new { x.school_id, x.lesson_id },
                        principalTable: "lessons",
                        principalColumns: new[] { "school_id", "id" },
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "fk_scans_pupils",
                        columns: x => new { x.school_id, x.pupil_id },
                        principalTable: "pupils",
                        principalColumns: new[] { "school_id", "id" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "scan_pictures",
                columns: table => new
                {
                    school_id = table.Column<Guid>(type: "uuid", nullable: false),
                    scan_id = table.Column<Guid>(type: "uuid", nullable: false),
                    picture_key = table.Column<string>(type: "text", nullable: false),
                    bytes = table.Column<byte[]>(type: "bytea", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_scan_pictures", x => new { x.school_id, x.scan_id, x.picture_key });
                    table.ForeignKey(
                        name: "fk_scan_pictures_scans",
                        columns: x => new { x.school_id, x.scan_id },
                        principalTable: "scans",
                        principalColumns: new[] { "school_id", "id" },
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "ix_pictures_pupil_id",
                table: "pictures",
                columns: new[] { "school_id", "pupil_id" });

            migrationBuilder.CreateIndex(
                name: "ix_scans_lesson_id",
                table: "scans",
                columns: new[] { "school_id", "lesson_id" });

            migrationBuilder.CreateIndex(
                name: "ix_scans_pupil_id",
                table: "scans",
                columns: new[] { "school_id", "pupil_id" });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "pictures");

            migrationBuilder.DropTable(
                name: "scan_pictures");

            migrationBuilder.DropTable(
                name: "scans");

            migrationBuilder.DropColumn(
                name: "keeps_photos",
                table: "schools");

            migrationBuilder.DropColumn(
                name: "keeps_words",
                table: "schools");
        }
    }
}
