@echo off
rem SPDX-License-Identifier: Apache-2.0
rem Starts Bermwright on the Java of this machine, 17 or later.
setlocal
set "home=%~dp0.."
set "java=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
if /i "%~1"=="edit" if /i not "%~2"=="--help" if /i not "%~2"=="-h" goto edit
set "jar=%home%\lib\bermwright-cli-@version@.jar"
set "start=%home%\lib\start.jsa"
set "share=-Dbermwright.archive=%start%"
if exist "%start%" set "share=-XX:SharedArchiveFile=%start%"
"%java%" -XX:+UseParallelGC -Xshare:auto -Xlog:disable -Xlog:all=error:stderr -Djava.awt.headless=true "%share%" -jar "%jar%" %*
exit /b %ERRORLEVEL%

:edit
if not defined BERMWRIGHT_DEMO set "BERMWRIGHT_DEMO=%home%\demo\plan.json"
"%java%" -cp "%home%\lib\bermwright-editor-@version@.jar;%home%\screens\win\*" bermwright.editor.Main %2 %3 %4 %5 %6 %7 %8 %9
exit /b %ERRORLEVEL%
