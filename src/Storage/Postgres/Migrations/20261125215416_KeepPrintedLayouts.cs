using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Slantwise.Storage.Postgres.Migrations
{
    /// <inheritdoc />
    public partial class KeepPrintedLayouts : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "printed_layouts",
                columns: table => new
                {
                    school_id = table.Column<Guid>(type: "uuid", nullable: false),
                    tag = table.Column<long>(type: "bigint", nullable: false),
                    format = table.Column<int>(type: "integer", nullable: false),
                    text = table.Column<string>(type: "text", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("pk_printed_layouts", x => new { x.school_id, x.tag });
                    table.ForeignKey(
                        name: "fk_printed_layouts_schools",
                        column: x => x.school_id,
                        principalTable: "schools",
                        principalColumn: "school_id",
                        onDelete: ReferentialAction.Restrict);
                });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "printed_layouts");
        }
    }
}
