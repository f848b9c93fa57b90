@echo off
rem SPDX-License-Identifier: Apache-2.0
rem Runs the built program, and builds it once where it is not built.
setlocal
set "root=%~dp0..\.."
set "version=0.1.0"
set "java=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
if /i "%~1"=="edit" if /i not "%~2"=="--help" if /i not "%~2"=="-h" goto edit
set "jar=%root%\layout\cli\target\bermwright-cli-%version%-all.jar"
if not exist "%jar%" call :build layout/cli
if not exist "%jar%" exit /b 3
"%java%" -XX:+UseParallelGC -Djava.awt.headless=true -jar "%jar%" %*
exit /b %ERRORLEVEL%

:edit
set "jar=%root%\layout\editor\target\bermwright-editor-%version%-all.jar"
if not exist "%jar%" call :build layout/editor
if not exist "%jar%" exit /b 3
"%java%" -jar "%jar%" %2 %3 %4 %5 %6 %7 %8 %9
exit /b %ERRORLEVEL%

:build
echo bermwright: building %1 once 1>&2
pushd "%root%"
call mvn -q -B -DskipTests -Dcheckstyle.skip -pl %1 -am package 1>&2
popd
exit /b 0
